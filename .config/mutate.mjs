// Node does not read TypeScript here; vite does. Usage: npm run mutate -- [count] [seed] [part of a path]
import { runnerImport } from "vite";

const { module } = await runnerImport(new URL("../tests/mutation/mutate.ts", import.meta.url).pathname);
module.mutate(process.argv.slice(2));
