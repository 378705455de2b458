// What is asked of our own JavaScript. Run by tests/house/test_js.py with the eslint of scripts/npm.
import { createRequire } from "node:module";

const parts = createRequire(new URL("../.cache/npm/package.json", import.meta.url));
const js = parts("@eslint/js");
const globals = parts("globals");

const scripts = (files, known) => ({
  files,
  languageOptions: { sourceType: "script", globals: known },
});

export default [
  // what release 0.1.0 shipped is kept as it was
  {
    ignores: [
      ".cache/**", ".venv/**", "build/**", "dist/**", "site/**", "tests/release_0_1_0/**",
      "docs/assets/places/**", // figures, made by scripts/make_places.py
    ],
  },
  js.configs.recommended,
  {
    linterOptions: { reportUnusedDisableDirectives: "error" },
    rules: {
      "array-callback-return": "error",
      "consistent-this": "error",
      eqeqeq: "error",
      "max-len": ["error", { code: 110, ignoreUrls: true }],
      "max-lines": ["error", 400],
      "max-lines-per-function": ["error", 40], // as in Python; the function round a script is none
      "no-alert": "error",
      "no-console": ["error", { allow: ["info"] }],
      "no-eval": "error",
      "no-implicit-coercion": ["error", { boolean: true, number: false, string: false }],
      "no-implied-eval": "error",
      "no-loop-func": "error",
      "no-self-compare": "error",
      "no-shadow": "error",
      "no-unused-expressions": "error",
      "no-use-before-define": ["error", { functions: false, variables: false }],
      "no-useless-assignment": "error",
      "no-var": "error",
      "object-shorthand": "error",
      "prefer-const": "error",
      "prefer-object-has-own": "error",
      "prefer-rest-params": "error",
      "prefer-spread": "error",
      strict: ["error", "safe"],
    },
  },
  // classic scripts: the page's share one global, window.Springline*, and are each a function
  scripts(["docs/assets/*.js"], globals.browser),
  { files: ["docs/assets/*.js"], rules: { "no-implicit-globals": "error" } },
  { files: ["docs/assets/calculator.js"], rules: { "max-lines": "off" } }, // until it is two
  scripts(["scripts/runtime/*.js"], {
    ...globals.worker,
    WorkerGlobalScope: "readonly",
  }),
  scripts(["scripts/runtime/service_worker.js"], globals.serviceworker),
  { files: ["scripts/runtime/service_worker.js"], rules: { strict: ["error", "global"] } },
  // what the browser tests run in a page
  scripts(["tests/**/*.js"], globals.browser),
  { files: ["tests/release_0_1_0/*.js"], rules: { "no-shadow": "off", strict: "off" } },
  // what node runs: at build, and in the tests
  {
    files: ["**/*.mjs"],
    languageOptions: { sourceType: "module", globals: { ...globals.node, self: "writable" } },
    rules: { "no-console": "off" },
  },
  {
    files: ["tests/runtime/*.mjs"], // they also send functions into a page
    languageOptions: { globals: { SpringlineEngine: "readonly" } },
  },
];
