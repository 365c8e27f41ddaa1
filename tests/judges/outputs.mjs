import {
	copyFileSync,
	existsSync,
	mkdirSync,
	readdirSync,
	readFileSync,
	rmSync,
	writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { casebound, outFolder, root } from "./run.mjs";

/** Every output of every starter, bound anew: languages and unit systems all, or for the short form one pair a starter and language. */

const STARTERS = ["horizontal", "horizontal-as-built", "vertical-metric"];

const EXTRAS = "html,csv,xlsx,json,calendar,geojson,kml";

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

/** A revision of the starter, for the paper that tells what changed. */
const revised = (file, folder) => {
	const text = readFileSync(join(root, file), "utf8");
	const beside = join(root, file, "..");
	for (const [, name] of text.matchAll(/file: ([\w-]+\.csv)/g))
		if (existsSync(join(beside, name))) copyFileSync(join(beside, name), join(folder, name));
	const later = join(folder, "revised.yaml");
	writeFileSync(later, text.replace(/^(\s*revision:) .*$/m, "$1 Z"));
	return later;
};

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
	const papers = listed("papers")
		.filter((paper) => paper !== "changes")
		.join(",");
	return STARTERS.flatMap((starter) =>
		editions(short).map(({ language, units }) => {
			const folder = join(top, `${starter}-${language}-${units}`);
			mkdirSync(folder, { recursive: true });
			const file = `seeds/starters/${starter}.yaml`;
			const common = ["--lang", language, "--units", units, "--out", folder];
			casebound(["bind", file, "--for", papers, "--with", EXTRAS, ...common]);
			casebound(["bind", file, "--for", "crew", "--job", "all", "--with", "html", ...common]);
			if (language === "en") {
				const both = ["--lang", "en+es", ...common.slice(2)];
				casebound([
					"bind",
					file,
					"--for",
					"crew",
					"--job",
					"all",
					...both.slice(0, -1),
					join(folder, "en+es"),
				]);
				casebound([
					"compare",
					file,
					revised(file, folder),
					"--out",
					folder,
					"--with",
					"html",
					"--units",
					units,
				]);
			}
			casebound(["draw", file, ...common.slice(0, 4), "--out", join(folder, "drawings")]);
			return { folder, files: filesUnder(folder) };
		}),
	);
};
