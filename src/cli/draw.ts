import { join } from "node:path";
import { Argument, Command, Option } from "commander";
import type { Language } from "../document/document.ts";
import { DRAWING_WORDS } from "../drawing/drawing-words.ts";
import { drawings, renderPicture } from "../pipeline.ts";
import { renderSvg } from "../render/svg/render-svg.ts";
import type { UnitSystem } from "../units/format.ts";
import { writeWhole } from "./files.ts";
import type { Session } from "./program.ts";
import { readWell, rulesOption } from "./read-well.ts";
import { openShipped } from "./shipped.ts";
import { terminal } from "./terminal.ts";

interface DrawOptions {
	readonly out: string;
	readonly units: UnitSystem;
	readonly lang: Language;
	readonly png?: true;
	readonly rules: readonly string[];
}

/** `casebound draw`: every drawing of the well as a standalone SVG file, and as a PNG picture where that is asked for. */
export const drawCommand = (session: Session): Command =>
	new Command("draw")
		.addArgument(new Argument("<file>", "a definition"))
		.option("--out <folder>", "where to write", "papers")
		.option("--png", "write a PNG picture beside each SVG, 300 dots to the inch")
		.addOption(
			new Option("--units <system>", "units of the drawings").choices(["field", "metric"]).default("field"),
		)
		.addOption(
			new Option("--lang <language>", "language of the drawings")
				.choices(Object.keys(DRAWING_WORDS))
				.default("en"),
		)
		.addOption(rulesOption())
		.addHelpText("after", "\nExample:\n  casebound draw my-well.yaml --out papers --units metric --png")
		.action(async (file: string, options: DrawOptions) => {
			const findings = readWell(file, options.rules, openShipped(), session);
			if (findings === undefined) return;
			const write = (name: string, content: Uint8Array | string): void => {
				const target = join(options.out, name);
				writeWhole(target, content, { mayReplace: true });
				terminal.out(target);
			};
			for (const { name, drawing } of drawings(findings, options.units, options.lang)) {
				write(`${name}.svg`, renderSvg(drawing));
				if (options.png === true) write(`${name}.png`, await renderPicture(drawing));
			}
		});
