import { mkdirSync, readdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { casebound, outFolder } from "./run.mjs";

/** Every output of every starter, bound anew: languages and unit systems all, or for the short form one pair a starter and language. */

const STARTERS = ["horizontal", "horizontal-as-built", "vertical-metric"];

const editions = (short) =>
	["en", "es"].flatMap((language) =>
		(short ? [language === "en" ? "field" : "metric"] : ["field", "metric"]).map((units) => ({
			language,
			units,
		})),
	);

const filesUnder = (folder) =>
	readdirSync(folder, { recursive: true, withFileTypes: true })
		.filter((entry) => entry.isFile())
		.map((entry) => join(entry.parentPath, entry.name))
		.sort();

const listed = (what) =>
	casebound(["list", what])
		.stdout.split("\n")
		.map((line) => line.split(/\s/)[0])
		.filter((word) => word !== "");

/** Jobs of one starter that a crew pack can be bound for, as `bind` itself names them. */
const otherJobs = (printed) =>
	(/--job (.+)$/m.exec(printed)?.[1] ?? "").split(" | ").filter((job) => job !== "");

/**
 * Binds and draws everything into `out/judges/outputs`, a folder an edition.
 * With `bound`, what the last run bound is judged again.
 * @returns {{ folder: string, files: string[] }[]}
 */
export const bindOutputs = ({ short, bound }) => {
	const top = join(outFolder, "outputs");
	if (bound)
		return readdirSync(top).map((name) => ({ folder: join(top, name), files: filesUnder(join(top, name)) }));
	rmSync(top, { recursive: true, force: true });
	const papers = listed("papers").join(",");
	return STARTERS.flatMap((starter) =>
		editions(short).map(({ language, units }) => {
			const folder = join(top, `${starter}-${language}-${units}`);
			mkdirSync(folder, { recursive: true });
			const file = `seeds/starters/${starter}.yaml`;
			const common = ["--lang", language, "--units", units, "--out", folder];
			const printed = casebound([
				"bind",
				file,
				"--for",
				papers,
				"--with",
				"html,csv,json,calendar",
				...common,
			]);
			for (const job of otherJobs(printed.stdout + printed.stderr)) {
				casebound(["bind", file, "--for", "crew", "--job", job, "--with", "html", ...common]);
			}
			casebound(["draw", file, ...common.slice(0, 4), "--out", join(folder, "drawings")]);
			return { folder, files: filesUnder(folder) };
		}),
	);
};
