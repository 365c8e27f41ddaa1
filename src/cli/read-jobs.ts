import { catalogOf } from "../catalog/catalog.ts";
import { checkSeed } from "../catalog/check-seed.ts";
import { type Job, type OwnJobs, ownJobsSchema, withOwnJobs } from "../catalog/jobs.ts";
import { hasErrors } from "../diagnostics/diagnostic.ts";
import { hasGlyph } from "../measure/has-glyph.ts";
import { SHEET_VALUES } from "../paper/crew/numbers.ts";
import { ALL_JOBS } from "../paper/crew/pack.ts";
import { POSTER } from "../paper/crew/poster.ts";
import { printableTree } from "../source/characters.ts";
import { decodeText } from "../source/decode-text.ts";
import { readYaml } from "../source/read-yaml.ts";
import type { NamedFile } from "../understand.ts";
import { nameOf, readBytes } from "./read-bytes.ts";
import { SeedFault } from "./seed-fault.ts";
import { refuse, type ShippedData, textsOf } from "./shipped.ts";

const readOne = (name: string): { readonly file: NamedFile; readonly jobs: OwnJobs } => {
	const shown = nameOf(name);
	const bytes = readBytes(name);
	const text = decodeText(bytes, shown);
	if (text.value === undefined) return refuse(text.diagnostics);
	const tree = readYaml(text.value, shown);
	const texts = textsOf(text.value, shown);
	if (tree.value === undefined || hasErrors(tree.diagnostics)) return refuse(tree.diagnostics, texts);
	const checked = checkSeed(ownJobsSchema, tree.value.value, shown);
	const located = checked.diagnostics.map((each) => ({ ...each, at: { ...each.at, file: shown } }));
	const faults = [...located, ...printableTree(tree.value.value, shown, hasGlyph).diagnostics];
	if (checked.value === undefined || hasErrors(faults)) return refuse(faults, texts);
	return { file: { name: shown, bytes }, jobs: checked.value };
};

/** Numbers that a job names, in its lists and within its steps, and that no sheet has. */
const strangeNumbers = ({ numbers, ask, site, steps }: Job): readonly string[] => {
	const inSteps = steps.flatMap((step) =>
		[step.step, step.hazard, step.control, step.stop_if]
			.flatMap((words) => (typeof words === "string" ? [words] : [words.en, words.es]))
			.flatMap((text) => [...text.matchAll(/\{([a-z_]+)\}/gu)].map(([, name = ""]) => name)),
	);
	const named = [
		...numbers.map(({ value }) => value),
		...ask.flatMap(({ answers }) => answers),
		...site,
		...inSteps,
	];
	return [...new Set(named)].filter((name) => !Object.hasOwn(SHEET_VALUES, name));
};

/**
 * What ships, with jobs of the user's own files among the jobs.
 *
 * @throws SeedFault, FileFault
 */
export const withJobsFiles = (shipped: ShippedData, names: readonly string[]): ShippedData => {
	if (names.length === 0) return shipped;
	const files = names.map(readOne);
	const { catalog } = shipped;
	const { jobs, unknown } = withOwnJobs(
		catalog.jobs,
		files.map((file) => file.jobs),
		catalog.commonItems,
	);
	const shown = files.map(({ file }) => file.name).join(", ");
	if (unknown.length > 0)
		throw new SeedFault(
			`casebound: ${shown}: no shipped job is called ${unknown.join(", ")}; a job of your own needs name, on, numbers, ask, site and steps`,
		);
	const taken = jobs.find(({ id }) => id === ALL_JOBS || id === POSTER);
	if (taken !== undefined)
		throw new SeedFault(
			`casebound: ${shown}: "${taken.id}" is what --job calls a paper of several jobs; choose another id`,
		);
	for (const job of jobs) {
		const strange = strangeNumbers(job);
		if (strange.length > 0)
			throw new SeedFault(
				`casebound: ${shown}: the job ${job.id} names ${strange.join(", ")}, which no sheet has; the numbers are: ${Object.keys(SHEET_VALUES).sort().join(", ")}`,
			);
	}
	return {
		...shipped,
		catalog: catalogOf({ ...catalog, jobs }),
		own: [...(shipped.own ?? []), ...files.map(({ file }) => file)],
	};
};
