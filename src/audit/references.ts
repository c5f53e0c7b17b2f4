export { contains, referencesOf } from "../workbook/references";
