import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { ownJobsSchema, withOwnJobs } from "../../src/catalog/jobs.ts";
import { loadCatalog } from "../../src/catalog/load-catalog.ts";
import type { PaperDocument } from "../../src/document/document.ts";
import { jobName, jobsOfWell } from "../../src/paper/jobs.ts";
import { composePapers, type PaperRequest } from "../../src/pipeline.ts";
import { setPaper } from "../../src/render/pdf/set-paper.ts";
import { renderText } from "../../src/render/text/render-text.ts";
import { readYaml } from "../../src/source/read-yaml.ts";
import { readPdf } from "../render/read-pdf.ts";
import { inspectPdf } from "../render/structure/structure-faults.ts";
import { sampleOf } from "../run/sample.ts";
import { setOnce } from "../run/set-once.ts";
import { findingsOf, STARTERS, starterText, understandText } from "../starters.ts";

const paperOf = (
	findings: ReturnType<typeof findingsOf>,
	job: string,
	more: Partial<PaperRequest> = {},
): PaperDocument => {
	const [made] = composePapers(findings, [
		{ paper: "crew", language: "en", units: "field", job, ...more },
	]).documents;
	if (made === undefined) throw new Error(`nothing comes of ${job}`);
	return made.paper;
};

describe("every job as one paper", () => {
	const findings = findingsOf("horizontal");
	const jobs = jobsOfWell(findings.well).map(jobName);

	it("is a list of them, two pages each, and the poster; each with its bookmark", async () => {
		const paper = paperOf(findings, "all");
		const { pages, findings: faults, bytes } = await setOnce(paper);
		expect(faults).toEqual([]);
		expect(pages).toBe(1 + 2 * jobs.length + 1);
		const { outline } = await readPdf(bytes);
		const titles = outline.map(({ title }) => title);
		expect(titles).toHaveLength(1 + 2 * jobs.length + 1);
		expect(new Set(titles).size).toBe(titles.length);
		expect(titles).toContain("Cementing, production string");
		expect(titles.at(-1)).toBe("Pumping: pressures that limit the job");
	});

	it("says in its contents where the front of each sheet is", async () => {
		const { bytes } = await setOnce(paperOf(findings, "all"));
		const [first = ""] = (await readPdf(bytes)).texts;
		expect(first).toContain("Flowback");
		expect(first).not.toContain("Flowback: people");
	});
});

it.each([
	["all", {}],
	["poster", {}],
	["pumping", { second: "es" }],
	["all", { second: "es" }],
] as const)("%s (%o) has structure throughout", async (job, more) => {
	const { bytes, findings: faults } = await setOnce(paperOf(findingsOf("vertical-metric"), job, more));
	expect(faults).toEqual([]);
	expect((await inspectPdf(bytes, "en")).faults).toEqual([]);
});

describe("the poster", () => {
	it.each([
		["field", 1224, 792],
		["metric", 1191, 842],
	] as const)(
		"is one large page (%s), with every rung of the ladder and the right to stop",
		(units, width, height) => {
			const findings = findingsOf("horizontal");
			const paper = paperOf(findings, "poster", { units });
			const { pages, findings: faults } = setPaper(paper);
			expect(faults).toEqual([]);
			expect(pages).toHaveLength(1);
			expect([Math.round(pages[0]?.sheet.width ?? 0), Math.round(pages[0]?.sheet.height ?? 0)]).toEqual([
				width,
				height,
			]);
			const text = renderText(paper);
			const { rungs = [] } = findings.results.stimulation?.ladder ?? {};
			expect(rungs.length).toBeGreaterThan(5);
			for (const { pressure } of rungs)
				if (units === "field")
					expect(text).toContain(Math.round(pressure.value).toLocaleString("en-US").slice(0, -1));
			expect(text).toContain("Anyone may stop this job");
			expect(text).toContain("do not work from this sheet");
		},
	);

	it("is not hung of a treatment that is on record as done", () => {
		const built = findingsOf("horizontal-as-built");
		const { safety: { jobs: _, ...safety } = {}, ...well } = built.well;
		const every = { ...built, well: { ...well, safety } as typeof built.well };
		expect(paperOf(every, "all").sections.map(({ id }) => id)).not.toContain("poster");
		expect(setPaper(paperOf(every, "all")).findings).toEqual([]);
	});

	it("is not to be had of a well without treatment", () => {
		const findings = findingsOf("horizontal");
		const { stimulation: _, ...results } = findings.results;
		const { stimulation: __, ...well } = findings.well;
		const untreated = {
			...findings,
			results: results as typeof findings.results,
			well: well as typeof findings.well,
		};
		expect(
			composePapers(untreated, [{ paper: "crew", language: "en", units: "field", job: "poster" }]).unknownJob,
		).toBeDefined();
	});
});

const both = sampleOf(
	"two languages",
	STARTERS.flatMap((starter) =>
		jobsOfWell(findingsOf(starter).well).flatMap((job) =>
			(["field", "metric"] as const).map((units) => [starter, jobName(job), units] as const),
		),
	),
	6,
);

/** Letter or 11 × 17 in; A4 or A3 where the reader thinks in meters. */
const SHEETS = { field: [612, 1224], metric: [595, 1191] } as const;

describe("two languages on one sheet", () => {
	it.each(both)("%s, %s, %s: two pages, letter or 11 × 17 in, step for step", (starter, job, units) => {
		const findings = findingsOf(starter);
		const paper = paperOf(findings, job, { second: "es", units });
		const { pages, findings: faults } = setPaper(paper);
		expect(faults).toEqual([]);
		expect(pages).toHaveLength(2);
		expect(SHEETS[units]).toContain(Math.round(pages[0]?.sheet.width ?? 0));
		const steps = paper.sections[0]?.blocks.find((block) => block.kind === "table" && block.id === "steps");
		if (steps?.kind !== "table") throw new Error("there are no steps");
		const [english, spanish] = (["en", "es"] as const).map((language) =>
			paperOf(findings, job, { language, units }),
		);
		for (const [i, one] of [english, spanish].entries()) {
			const alone = one?.sections[0]?.blocks.find((block) => block.kind === "table" && block.id === "steps");
			if (alone?.kind !== "table") throw new Error("there are no steps");
			expect(steps.rows).toHaveLength(alone.rows.length);
			const id = i === 0 ? "first" : "second";
			for (const [k, row] of alone.rows.entries())
				for (const cell of Object.values(row.cells))
					if (cell.kind === "text")
						expect(JSON.stringify(steps.rows[k]?.cells[id])).toContain(
							JSON.stringify(cell.text).slice(1, -1),
						);
		}
		const text = renderText(paper);
		expect(text).toContain("Anyone may stop this job");
		expect(text).toContain("Cualquiera puede parar este trabajo");
		expect(text.match(/versión en inglés/gu)).toHaveLength(1);
	});
});

describe("jobs of a company's own", () => {
	const readme = readFileSync(new URL("../../seeds/jobs/README.md", import.meta.url), "utf8");
	const example = /```yaml\n([\s\S]*?)```/u.exec(readme)?.[1] ?? "";
	const own = ownJobsSchema.parse(readYaml(example, "own.yaml").value?.value);
	const catalog = loadCatalog().value;
	if (catalog === undefined) throw new Error("the catalogue does not load");
	const { jobs, unknown } = withOwnJobs(catalog.jobs, [own], catalog.commonItems);
	const findings = { ...findingsOf("horizontal"), jobs };

	it("add items to a shipped job, behind its own", () => {
		expect(unknown).toEqual([]);
		expect(renderText(paperOf(findings, "pumping"))).toContain("Double gloves at the acid tank.");
		expect(renderText(paperOf(findings, "flowback"))).not.toContain("Double gloves");
	});

	it("are jobs of the well, on a sheet like the others", () => {
		const paper = paperOf(findings, "sand-cleanout", { language: "es" });
		const { pages, findings: faults } = setPaper(paper);
		expect(faults).toEqual([]);
		expect(pages).toHaveLength(2);
		expect(paper.imprint.title).toContain("limpieza de arena");
		const text = renderText(paper).replaceAll("\u00a0", " ");
		expect(text).toContain("¿Dónde no puede estar nadie?");
		expect(text).toContain("Bloquear, etiquetar y probar");
		expect(text).toContain("15,000 psi");
	});

	it("that name no shipped job and are none are told", () => {
		expect(withOwnJobs(catalog.jobs, [{ jobs: [{ id: "pumpin" }] }], catalog.commonItems).unknown).toEqual([
			"pumpin",
		]);
	});
});

describe("words of a Spanish pack", () => {
	const findings = findingsOf("vertical-metric");

	it("name elements and pump stops of the poster as the sheets do", () => {
		const words = JSON.stringify(paperOf(findings, "poster", { language: "es" }));
		for (const said of [
			"Línea de tratamiento",
			"Cabezal",
			"Prueba del revestimiento",
			"Paro automático de bomba 1",
		])
			expect(words).toContain(said);
		for (const english of ["Treating iron", "Wellhead ", "Casing test", "Disparo de bomba"])
			expect(words).not.toContain(`"${english}`);
	});

	it("name floats, and what a share of cement is of", () => {
		expect(renderText(paperOf(findings, "casing-production", { language: "es" }))).toContain(
			"zapata flotadora, collar flotador",
		);
		expect(renderText(paperOf(findings, "cementing-surface"))).toMatch(
			/Cement pumped over calculated \(times\) \| at least 1\.10/u,
		);
	});
});

it("a pressure test tells of a head that holds less, and of the one that is treated through", () => {
	const stated = renderText(paperOf(findingsOf("vertical-metric"), "pressure-test-production"));
	expect(stated).not.toContain("Wellhead rating, drilling");
	expect(stated).toMatch(/Wellhead rating, treating: 10,00\d\spsi: the one that must be on in this test/u);
	const text = starterText("vertical-metric");
	expect(text).toContain(", head: stimulation }");
	const { findings } = understandText(text.replace(", head: stimulation }", " }"));
	if (findings === undefined) throw new Error("the head of a test is not needed");
	const sheet = renderText(paperOf(findings, "pressure-test-production"));
	expect(sheet).toMatch(
		/Wellhead rating, drilling: 3,046\spsi: less than the test\. Do not test against it/u,
	);
	expect(sheet).toMatch(/Wellhead rating, treating: 10,00\d\spsi/u);
	expect(sheet).not.toContain("must be on in this test");
	const surface = renderText(paperOf(findingsOf("vertical-metric"), "pressure-test-surface"));
	expect(surface).toMatch(/Wellhead rating, drilling: 3,046\spsi/u);
	expect(surface).not.toContain("less than the test");
	expect(surface).not.toContain("Wellhead rating, treating");
});
