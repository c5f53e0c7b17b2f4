// Packages published as ES modules only: those of the charts, and what the grid's engine stands on.
const esmOnly = [
  ...["d3-[a-z-]+", "internmap"],
  ...["lodash-es", "nanoid", "rbush", "quickselect", "kdbush", "collapse-white-space", "n-gram"],
  ...["trigram-utils", "franc-min", "unicode-regex", "regexp-util", "cjk-regex"],
];

// A test's globals are slow to reach: those that are asked for a hundred million times are handed to every module.
const sandboxInjectedGlobals = [
  ...["Array", "Boolean", "Error", "JSON", "Map", "Math", "Number", "Object", "RegExp", "Set"],
  ...["String", "Symbol", "WeakMap", "Float64Array", "Uint8Array"],
];

const shared = {
  rootDir: __dirname,
  sandboxInjectedGlobals,
  transform: {
    "^.+\\.(t|j|mj)sx?$": [
      "@swc/jest",
      {
        jsc: {
          target: "es2022",
          parser: { syntax: "typescript", tsx: true },
          transform: { react: { runtime: "automatic", importSource: "preact" } },
        },
        module: { type: "commonjs" },
      },
    ],
  },
  transformIgnorePatterns: [`/node_modules/(?!(${esmOnly.join("|")})/)`],
};

module.exports = {
  rootDir: __dirname,
  testTimeout: 60000,
  testSequencer: "<rootDir>/.jest.longestFirst.cjs",
  projects: [
    {
      ...shared,
      displayName: "node",
      testEnvironment: "node",
      testMatch: ["<rootDir>/tests/**/*.test.ts"],
      testPathIgnorePatterns: ["<rootDir>/tests/browser/"],
    },
    {
      ...shared,
      displayName: "pane",
      testEnvironment: "jsdom",
      testEnvironmentOptions: { customExportConditions: ["node", "require", "default"] },
      testMatch: ["<rootDir>/tests/**/*.test.tsx"],
      moduleNameMapper: { "\\.css$": "<rootDir>/tests/emptyStyle.ts" },
    },
    {
      ...shared,
      displayName: "browser",
      testEnvironment: "node",
      testMatch: ["<rootDir>/tests/browser/**/*.test.ts"],
    },
  ],
};
