#!/usr/bin/env node
import module from "node:module";
import process from "node:process";

// Where this Node can keep compiled code between runs, it does; where it cannot, nothing is lost but time.
const { enableCompileCache } = module as { enableCompileCache?: () => unknown };
enableCompileCache?.();

const { run } = await import("./cli/program.ts");
process.exitCode = await run(process.argv);
