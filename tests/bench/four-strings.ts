import { loadCatalog } from "../../src/catalog/load-catalog.ts";
import { understand } from "../../src/pipeline.ts";
import type { Well } from "../../src/well/well.ts";
import { told } from "../told.ts";

/*
 * A long horizontal well, surveyed every 3 1/2 ft: 5,000 stations, four strings, salt, a packer and a treatment, so that
 * every load case is worked. Operator, county, formations and people are fictional.
 */

export const STATIONS = 5000;
const STEP = 3.5;
const [KICKOFF, BUILD] = [9200, 8];

/** A hole that wanders by a fixed rule: some tenths of a degree about its plan. */
const survey = (): string => {
	const rows = Array.from({ length: STATIONS }, (_, i) => {
		const md = i * STEP;
		const planned = Math.min(90, Math.max(0, ((md - KICKOFF) * BUILD) / 100));
		const wander = i === 0 ? 0 : 0.3 * Math.sin(i / 9) + 0.2 * Math.sin(i / 31);
		const azimuth = 150 + 2 * Math.sin(i / 47);
		return `${md.toFixed(2)},${Math.abs(planned + wander).toFixed(3)},${azimuth.toFixed(3)}`;
	});
	return `md [ft],inclination [deg],azimuth [deg]\n${rows.join("\n")}\n`;
};

const string = (id: string, pipe: string, to: number, more = ""): string => `
  - id: ${id}
    hole: ${id}
    pipe: [{ ${pipe}, connection: BTC, condition: new, joint: 40 ft, from: surface, to: ${to} ft }]
    cement:
      slurries: [{ role: tail, class: H, from: surface, to: ${to} ft, excess: 10 %, density: 13.0 ppg, yield: 1.75 ft3/sk, water: 9.2 gal/sk }]
      displacement: { density: 9.0 ppg }
      plugs: [bottom, top]
      top_method: calculated
    pressure_test: { pressure: 2000 psi, hold: 30 min }${more}`;

const DEFINITION = `definition: 1
well: { name: Long Reach 1 (fictional), operator: Quillback Operating (fictional), api_number: 42-000-00000-00-00, permit: D-00003 (fictional), field: Long Reach (fictional), class: development, purpose: gas, state: draft, issued: 2026-05-04, prepared_by: { name: A. Nobody (fictional) } }
site:
  jurisdictions: [us-tx]
  surface_location: { latitude: 31.5, longitude: -98.8, datum: NAD83 }
  ground_elevation: 1500 ft
  depth_datum: { name: rotary table, above_ground: 20 ft, to_casing_hanger: 20 ft }
  north: { reference: true }
geology:
  temperature: { surface: 70 degF, gradient: 1.5 degF/100 ft }
  overburden: 1.0 psi/ft
  formations:
    - { name: Sand, top: 20 ft TVD, lithology: sand, pore_pressure: 8.4 ppg, fracture_gradient: 0.85 psi/ft }
    - { name: Shale, top: 1800 ft TVD, lithology: shale, pore_pressure: 8.8 ppg, fracture_gradient: 0.85 psi/ft }
    - { name: Salt, top: 6000 ft TVD, base: 6200 ft TVD, lithology: salt, mobile: true, fracture_gradient: 0.95 psi/ft }
    - { name: Lower Shale, top: 6200 ft TVD, lithology: shale, pore_pressure: 9.6 ppg, fracture_gradient: 0.88 psi/ft }
    - { name: Target, top: 9700 ft TVD, base: 10100 ft TVD, lithology: shale, target: true, pore_pressure: 10.8 ppg, fracture_gradient: 0.85 psi/ft }
trajectory: { actual: { survey: { file: survey.csv } } }
holes:
  - { id: surface, diameter: 26 in, to: 2010 ft, fluid: { kind: mud, density: 8.8 ppg } }
  - { id: first, diameter: 17 1/2 in, to: 5510 ft, fluid: { kind: mud, density: 9.4 ppg } }
  - { id: second, diameter: 12 1/4 in, to: 9010 ft, fluid: { kind: mud, density: 10.2 ppg } }
  - { id: production, diameter: 8 1/2 in, to: 17500 ft, fluid: { kind: mud, density: 11.4 ppg } }
casing:${string("surface", "od: 20 in, weight: 133 lb/ft, grade: K55", 2000)}${string("first", "od: 13 3/8 in, weight: 68 lb/ft, grade: L80", 5500)}${string("second", "od: 9 5/8 in, weight: 53.5 lb/ft, grade: P110, drift: 8.5 in", 9000)}${string(
	"production",
	"od: 5 1/2 in, weight: 23 lb/ft, grade: P110",
	17_480,
	"\n    loads: { production: { packer: 9100 ft, packer_fluid: 8.6 ppg } }",
)}
stimulation:
  method: single interval
  treated_through: production
  base_fluid: { kind: slickwater, density: 8.4 ppg }
  water_sources: [{ name: Pond water, share: 100 % }]
  limits: { maximum_treating_pressure: 9000 psi }
  stages: { interval: { from: 17200 ft, to: 17300 ft }, treatment: { rate: 20 bbl/min, steps: [{ name: pad, clean_volume: 200 bbl }] } }
`;

/** @throws Error if the well does not resolve, or a situation is not worked on it */
export const fourStrings = (): Well => {
	const { value: catalog } = loadCatalog();
	if (catalog === undefined) throw new Error("the shipped catalogue does not load");
	const { findings, diagnostics } = understand(
		{ name: "long-reach.yaml", bytes: Buffer.from(DEFINITION) },
		{ catalog, version: "0.0.0", ownRules: [], readFile: (file) => ({ file, bytes: Buffer.from(survey()) }) },
	);
	if (findings === undefined)
		throw new Error(diagnostics.map(({ code, what }) => `${code}: ${told(what)}`).join("\n"));
	const { casing, trajectory } = findings.results;
	const worked = new Set(
		Object.values(casing).flatMap(({ loads }) => loads.map(({ situation }) => situation)),
	);
	if (worked.size !== 14) throw new Error(`only ${[...worked].join(", ")} were worked`);
	if (trajectory.path.rows.length < STATIONS) throw new Error("stations are missing");
	return findings.well;
};
