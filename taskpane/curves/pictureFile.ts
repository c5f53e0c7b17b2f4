const STYLED = [
  ...["fill", "fill-opacity", "stroke", "stroke-width", "stroke-dasharray", "stroke-linecap"],
  ...["opacity", "font-size", "font-weight", "font-family", "paint-order"],
];

const BORDER = 8; // so that nothing touches the edge of the saved picture

/** A drawing as a file of its own: the colours and letters it has on the screen are written into it. */
export function svgText(svg: SVGSVGElement): string {
  const copy = svg.cloneNode(true) as SVGSVGElement;
  const drawn = [svg, ...svg.querySelectorAll("*")];
  [copy, ...copy.querySelectorAll("*")].forEach((element, at) => {
    const original = drawn[at];
    if (original === undefined) return;
    const style = getComputedStyle(original);
    for (const name of STYLED) {
      const value = style.getPropertyValue(name);
      if (value !== "") element.setAttribute(name, value);
    }
    element.removeAttribute("class");
  });
  const { x, y, width, height } = svg.viewBox.baseVal;
  const ground = document.createElementNS("http://www.w3.org/2000/svg", "rect");
  const box = [x - BORDER, y - BORDER, width + 2 * BORDER, height + 2 * BORDER];
  ["x", "y", "width", "height"].forEach((name, at) => {
    ground.setAttribute(name, String(box[at]));
  });
  ground.setAttribute("fill", getComputedStyle(document.body).backgroundColor);
  copy.prepend(ground);
  copy.setAttribute("viewBox", box.join(" "));
  copy.setAttribute("width", String(box[2]));
  copy.setAttribute("height", String(box[3]));
  copy.setAttribute("xmlns", "http://www.w3.org/2000/svg");
  return new XMLSerializer().serializeToString(copy);
}

const PNG_SCALE = 3; // sharp on paper

/** The drawing as PNG, base64 without the prefix. */
export async function pngBase64(svg: SVGSVGElement): Promise<string> {
  const { width, height } = svg.viewBox.baseVal;
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svgText(svg))}`;
  await image.decode();
  const canvas = document.createElement("canvas");
  canvas.width = (width + 2 * BORDER) * PNG_SCALE;
  canvas.height = (height + 2 * BORDER) * PNG_SCALE;
  const pen = canvas.getContext("2d");
  if (pen === null) throw new Error("This browser draws no pictures.");
  pen.drawImage(image, 0, 0, canvas.width, canvas.height);
  return canvas.toDataURL("image/png").replace(/^data:image\/png;base64,/, "");
}
