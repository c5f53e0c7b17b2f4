import tseslint from "typescript-eslint";

const noHostGlobals = ["CustomFunctions", "Excel", "Office", "window", "document"].map((name) => ({
  name,
  message: "Only worksheet/register, the bench and the task pane know the host.",
}));

export default tseslint.config(
  { ignores: ["dist/**", "node_modules/**", ".cache/**", "webpack.config.js", "**/*.mjs"] },
  ...tseslint.configs.strictTypeChecked,
  {
    languageOptions: {
      parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname },
    },
    rules: {
      "@typescript-eslint/restrict-template-expressions": ["error", { allowNumber: true }],
      "@typescript-eslint/no-confusing-void-expression": ["error", { ignoreArrowShorthand: true }],
      "no-restricted-syntax": [
        "error",
        { selector: "ExportDefaultDeclaration", message: "Named exports only." },
      ],
      "no-alert": "error",
    },
  },
  {
    files: ["src/**/*.ts", "src/**/*.tsx"],
    ignores: ["src/bench/**", "src/worksheet/register.ts"],
    rules: { "no-restricted-globals": ["error", ...noHostGlobals] },
  },
  {
    files: ["tests/**"],
    rules: {
      "@typescript-eslint/no-non-null-assertion": "off",
      "@typescript-eslint/no-unsafe-assignment": "off",
      "@typescript-eslint/no-unsafe-member-access": "off",
      "@typescript-eslint/no-unsafe-argument": "off",
      "@typescript-eslint/no-unsafe-call": "off",
      "@typescript-eslint/no-unsafe-return": "off",
    },
  },
  {
    // Hundreds of invented sheets: the compiler has read their types, asking for them again takes a minute.
    files: ["tests/corpus/*/**"],
    ...tseslint.configs.disableTypeChecked,
    languageOptions: { parserOptions: { projectService: false } },
  },
);
