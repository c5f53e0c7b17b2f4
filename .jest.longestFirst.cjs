const { default: Sequencer } = require("@jest/test-sequencer");

// A clean checkout has no times of earlier runs to go by: a long file begun last would keep one core waiting.
const LONG = [
  ...["audit/corpus", "audit/restated", "audit/anyWorkbook", "audit/edits", "cli/audit"],
  ...["corpus/corpusFiles", "browser/pane", "browser/larder", "browser/costing"],
];

const isLong = ({ path }) => LONG.some((name) => path.endsWith(`tests/${name}.test.ts`));

/** The long files first, the others as Jest sorts them. */
module.exports = class LongestFirst extends Sequencer {
  sort(tests) {
    const sorted = super.sort(tests);
    return [...sorted.filter(isLong), ...sorted.filter((test) => !isLong(test))];
  }
};
