import type { ComponentChildren } from "preact";
import { render } from "preact-render-to-string";
import { helpStyle } from "./helpStyle";

interface PageProps {
  readonly title: string;
  readonly children: ComponentChildren;
}

function Page({ title, children }: PageProps) {
  return (
    <html lang="en">
      <head>
        <meta charSet="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <title>{title}</title>
        <style dangerouslySetInnerHTML={{ __html: helpStyle }} />
      </head>
      <body>{children}</body>
    </html>
  );
}

/** A whole static page as text. */
export function page(title: string, children: ComponentChildren): string {
  return `<!doctype html>\n${render(<Page title={title}>{children}</Page>)}\n`;
}
