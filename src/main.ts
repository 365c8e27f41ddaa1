#!/usr/bin/env node
import process from "node:process";
import { run } from "./cli/program.ts";

process.exitCode = await run(process.argv);
