import { choice, defineFunction, targetName } from "../define";

export const target = defineFunction({
  name: "TARGET",
  summary: "A serving-temperature target: how much is ice at which temperature.",
  args: {
    name: targetName("Name of the target"),
    property: choice("What is asked", [
      ...(["temperature", "ice from", "ice to", "basis", "note", "obtained"] as const),
    ]),
  },
  unit: "as the property",
  sources: ["commonPractice"],
  example: { formula: '=RIME.TARGET("scooped at −13","ice from")', from: "common practice" },
  method:
    "Temperatures are common practice; the bands were computed around textbook mixes. Put your own in a range with the headers name, temperature, ice from, ice to, basis and hand it to CHECK.",
  seeAlso: ["CHECK"],
  compute: ({ name, property }) => {
    switch (property) {
      case "temperature":
        return name.temperatureC;
      case "ice from":
        return name.iceFrom;
      case "ice to":
        return name.iceTo;
      default:
        return name[property];
    }
  },
});
