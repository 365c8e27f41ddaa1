import { join } from "node:path";
import { Argument, Command, Option } from "commander";
import { type Language, PAPERS, type Paper } from "../document/document.ts";
import { fileSlug } from "../document/file-slug.ts";
import { DRAWING_WORDS } from "../drawing/drawing-words.ts";
import { drawings, renderPicture } from "../pipeline.ts";
import { renderSvg } from "../render/svg/render-svg.ts";
import type { UnitSystem } from "../units/format.ts";
import type { Session } from "./program.ts";
import { readWell, rulesOption } from "./read-well.ts";
import { openShipped } from "./shipped.ts";
import { terminal } from "./terminal.ts";
import { type NewFile, writeSet } from "./write-set.ts";

interface DrawOptions {
	readonly out: string;
	readonly units: UnitSystem;
	readonly lang: Language;
	readonly for: Paper;
	readonly png?: true;
	readonly rules: readonly string[];
}

/** `casebound draw`: every drawing of the well as a standalone SVG file, and as a PNG picture where that is asked for. */
export const drawCommand = (session: Session): Command =>
	new Command("draw")
		.addArgument(new Argument("<file>", "a definition; - is standard input"))
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
		.addOption(
			new Option("--for <paper>", "whose readers the drawings are for: without what is kept from them")
				.choices([...PAPERS])
				.default("regulator"),
		)
		.addOption(rulesOption())
		.addHelpText("after", "\nExample:\n  casebound draw my-well.yaml --out papers --units metric --png")
		.action(async (file: string, options: DrawOptions) => {
			const findings = readWell(file, options.rules, openShipped(), session);
			if (findings === undefined) return;
			const files: NewFile[] = [];
			for (const { name, drawing } of drawings(findings, options.units, options.lang, options.for)) {
				files.push({ name: `${name}.svg`, content: renderSvg(drawing) });
				if (options.png === true) files.push({ name: `${name}.png`, content: await renderPicture(drawing) });
			}
			const { identity } = findings.well;
			const revision = identity.revisions?.at(-1)?.id;
			const beside = await writeSet(options.out, {
				slug: fileSlug(identity.name),
				well: identity.name,
				...(revision === undefined ? {} : { revision }),
				definition: findings.digest,
				files,
			});
			for (const { name } of files) terminal.out(join(options.out, name));
			for (const line of beside) terminal.err(`casebound: ${line}`);
		});
