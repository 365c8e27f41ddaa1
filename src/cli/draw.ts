import { join } from "node:path";
import { Argument, Command, Option } from "commander";
import { drawings } from "../pipeline.ts";
import { renderSvg } from "../render/svg/render-svg.ts";
import type { UnitSystem } from "../units/format.ts";
import { writeWhole } from "./files.ts";
import type { Session } from "./program.ts";
import { readWell, rulesOption } from "./read-well.ts";
import { openShipped } from "./shipped.ts";
import { terminal } from "./terminal.ts";

/** `casebound draw`: every drawing of the well as a standalone SVG file. */
export const drawCommand = (session: Session): Command =>
	new Command("draw")
		.description("write the drawings as SVG, for slides and posters")
		.addArgument(new Argument("<file>", "a definition"))
		.option("--out <folder>", "where to write", "papers")
		.addOption(new Option("--units <system>", "units of the drawings").choices(["field", "metric"]).default("field"))
		.addOption(rulesOption())
		.addHelpText("after", "\nExample:\n  casebound draw my-well.yaml --out papers --units metric")
		.action((file: string, options: { readonly out: string; readonly units: UnitSystem; readonly rules: readonly string[] }) => {
			const findings = readWell(file, options.rules, openShipped(), session);
			if (findings === undefined) return;
			for (const { name, drawing } of drawings(findings, options.units)) {
				const target = join(options.out, `${name}.svg`);
				writeWhole(target, renderSvg(drawing), { mayReplace: true });
				terminal.out(target);
			}
		});
