import { defineConfig } from "vitest/config";
import each from "./vitest.config.ts";

/** The long run: every sweep in whole, `npm run test:all`. */
export default defineConfig({ ...each, test: { ...each.test, env: { WHOLE_SUITE: "1" } } });
