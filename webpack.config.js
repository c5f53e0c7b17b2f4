// Two bundles from the same sources: the add-in (functions and pane, as Excel loads them) and the bench.
require("tsx/cjs"); // the build reads the project's own TypeScript: metadata and help come from the functions
const fs = require("node:fs");
const path = require("node:path");
const MiniCssExtractPlugin = require("mini-css-extract-plugin");
const CopyPlugin = require("copy-webpack-plugin");
const { Resvg } = require("@resvg/resvg-js");

const dist = path.join(__dirname, "dist");
const ICON_SIZES = [16, 32, 64, 80];

const shared = {
  mode: "production",
  devtool: "source-map",
  performance: false,
  stats: "errors-warnings",
  resolve: { extensions: [".ts", ".tsx", ".js"] },
  module: {
    rules: [
      { test: /\.tsx?$/, loader: "ts-loader", options: { transpileOnly: true } },
      { test: /\.css$/, use: [MiniCssExtractPlugin.loader, "css-loader"] },
    ],
  },
};

const cache = (name) => ({
  type: "filesystem",
  name,
  cacheDirectory: path.join(__dirname, ".cache", "webpack"),
  buildDependencies: { config: [__filename] },
});

/** Writes functions.json in every language, what Excel reads to know the functions, and the help, from the function objects. */
class MetadataPlugin {
  apply(compiler) {
    compiler.hooks.thisCompilation.tap("Metadata", (compilation) => {
      compilation.hooks.processAssets.tap(
        { name: "Metadata", stage: compilation.constructor.PROCESS_ASSETS_STAGE_ADDITIONAL },
        () => {
          const { functionMetadata, METADATA_FILES } = require("./src/worksheet/metadata.ts");
          for (const [file, words] of Object.entries(METADATA_FILES)) {
            const json = JSON.stringify(functionMetadata(words), null, 1);
            compilation.emitAsset(file, new compiler.webpack.sources.RawSource(json));
          }
          const { helpSite } = require("./src/help/helpSite.tsx");
          const { validationPage } = require("./tests/validation/validationPage.tsx");
          const validation = { name: "validation.html", html: validationPage() };
          for (const { name, html } of [...helpSite(), validation]) {
            compilation.emitAsset(`help/${name}`, new compiler.webpack.sources.RawSource(html));
          }
        },
      );
    });
  }
}

/** Leaves a mark beside what was built, dated to the build's beginning: `npm start` compares it with the sources. */
class BuiltMarkPlugin {
  apply(compiler) {
    const began = new Date();
    compiler.hooks.done.tap("BuiltMark", (stats) => {
      if (stats.hasErrors()) return;
      const mark = path.join(compiler.outputPath, ".built");
      fs.writeFileSync(mark, "");
      fs.utimesSync(mark, began, began);
    });
  }
}

const room = (name, test, priority) => ({
  ...{ name, test, priority, chunks: "async", minChunks: 1, enforce: true },
});

const drawIcon = (svg, size) =>
  new Resvg(svg, { fitTo: { mode: "width", value: size } }).render().asPng();

module.exports = [
  {
    ...shared,
    name: "addin",
    cache: cache("addin"),
    entry: { functions: "./src/worksheet/register.ts", pane: "./taskpane/main.tsx" },
    // Of what an earlier build left only the bench stays: the pane's weight is read off the folder.
    output: { path: dist, filename: "[name].js", clean: { keep: /^bench/ } },
    optimization: {
      // The shortest numbers for what is asked for most: the pane's weight has a limit.
      moduleIds: "size",
      runtimeChunk: { name: "runtime" },
      // What the functions and the pane share is loaded once, as Excel's shared runtime runs both in one page.
      splitChunks: {
        cacheGroups: {
          core: { name: "core", chunks: "initial", minChunks: 2, enforce: true },
          // Other rooms that the pane loads when they are wanted, each in a file of its own.
          german: room("germanSentences", /[\\/]src[\\/].*([gG]erman|sentenceTranslator)/, 2),
          audit: room("audit", /[\\/]src[\\/](audit|workbook)[\\/]/, 1),
        },
      },
    },
    plugins: [
      new MiniCssExtractPlugin({ filename: "[name].css" }),
      new MetadataPlugin(),
      new BuiltMarkPlugin(),
      new CopyPlugin({
        patterns: [
          { from: "taskpane/pane.html", to: "pane.html" },
          ...ICON_SIZES.map((size) => ({
            from: "taskpane/assets/icon.svg",
            to: `assets/icon-${size}.png`,
            transform: (svg) => drawIcon(svg, size),
          })),
        ],
      }),
    ],
  },
  {
    ...shared,
    name: "bench",
    cache: cache("bench"),
    entry: { bench: "./src/bench/page/main.ts", host: "./src/bench/host/main.ts" },
    output: {
      path: path.join(dist, "bench"),
      filename: "[name].js",
      chunkFilename: "[name].js",
      uniqueName: "bench", // the add-in's scripts run in the same page and must not share its chunk list
    },
    devtool: false,
    // Served from localhost only: minifying the grid would take a minute and gain nothing.
    optimization: { minimize: false },
    plugins: [
      new MiniCssExtractPlugin({ filename: "[name].css" }),
      new CopyPlugin({ patterns: [{ from: "src/bench/page/index.html", to: "index.html" }] }),
      new BuiltMarkPlugin(),
    ],
  },
];
