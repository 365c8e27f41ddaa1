import { javaClasses, versionOnPath } from "./java.mjs";
import { casebound, PYTHON, run } from "./run.mjs";

const FOOT = 0.3048;
const STARTERS = ["horizontal", "horizontal-as-built", "vertical-metric"];

/** Semi-major axis [m] and flattening of each datum's ellipsoid: GRS 80, WGS 84, Clarke 1866. */
const ELLIPSOIDS = {
	nad83: [6378137, 1 / 298.257222101],
	wgs84: [6378137, 1 / 298.257223563],
	nad27: [6378206.4, (6378206.4 - 6356583.8) / 6378206.4],
};

const resultsOf = (starter) => {
	const { values, inputs } = JSON.parse(casebound(["results", `seeds/starters/${starter}.yaml`]).stdout);
	const figure = (key) => {
		const found = values[key] ?? inputs[key];
		return typeof found === "string" ? figure(found) : found.value;
	};
	return { values, figure };
};

/** Distances and directions between two places that the starters' results carry, with what they were worked from. */
const geodesicsOf = (starter) => {
	const { values, figure } = resultsOf(starter);
	return Object.entries(values).flatMap(([key, value]) => {
		const [, asked, datum] = /^site\/(distance|azimuth)-(nad83|wgs84|nad27)$/.exec(value.formula ?? "") ?? [];
		if (asked === undefined) return [];
		const places = ["φ_1", "λ_1", "φ_2", "λ_2"].map((symbol) => figure(value.inputs[symbol]));
		return [{ where: `${starter}, ${key}`, asked, datum, places, value: value.value }];
	});
};

const geodesics = {
	name: "GeographicLib for Java",
	reads: "every distance and direction between two places in the starters' results",
	of: () => {
		const { absent, classPath } = javaClasses();
		if (absent !== undefined) return { absent };
		const all = STARTERS.flatMap(geodesicsOf);
		const found = Object.entries(ELLIPSOIDS).flatMap(([datum, ellipsoid]) => {
			const asked = all.filter((one) => one.datum === datum);
			const input = asked.map(({ places }) => places.join(" ")).join("\n");
			const args = ["-cp", classPath, "JudgeGeodesics", ...ellipsoid.map(String)];
			const lines = run("java", args, { input }).stdout.trim().split("\n");
			return asked.flatMap(({ where, asked: what, value }, index) => {
				const [distance, azimuth] = lines[index].split(" ").map(Number);
				const theirs = what === "distance" ? distance / FOOT : azimuth;
				// Results are printed to ten digits.
				return Math.abs(theirs - value) <= 1e-8 * Math.max(1, Math.abs(theirs))
					? []
					: [{ where, what: `${value} here, ${theirs} there` }];
			});
		});
		return {
			version: versionOnPath(classPath, "GeographicLib-Java"),
			read: "results of 3 starters",
			checks: all.length,
			found,
		};
	},
};

const PATH = "results.trajectory.path";

/** Results are printed to ten digits, and so are the angles that the path is worked from here. */
const NEAR = 1e-6;

/** The stations of a path and every true vertical depth read off it, worked anew from depth, inclination and azimuth alone. */
const pathOf = (starter) => {
	const { values, figure } = resultsOf(starter);
	const { rows } = values[PATH];
	const read = Object.entries(values).filter(
		([, { formula, inputs }]) => formula === "trajectory/tvd-at-md" && inputs.path === PATH,
	);
	const asked = {
		stations: rows.map((row) => row.slice(0, 3)),
		at: read.map(([, { inputs }]) => figure(inputs.MD)),
	};
	const { status, stdout, stderr } = run(PYTHON, ["tests/judges/python/path.py"], {
		input: JSON.stringify(asked),
	});
	if (status !== 0) throw new Error(`SciPy: ${stderr}`);
	const { version, stations, at } = JSON.parse(stdout);
	const pairs = [
		...rows.flatMap(([md, , , ...place], index) =>
			place.slice(0, 3).map((here, axis) => ({
				where: `${starter}, station at ${md} ft, ${["tvd", "north", "east"][axis]}`,
				here,
				there: stations[index][axis],
			})),
		),
		...read.map(([key, { value }], index) => ({
			where: `${starter}, ${key}`,
			here: value,
			there: at[index],
		})),
	];
	return { version, pairs };
};

const paths = {
	name: "SciPy",
	reads:
		"the paths: every station and every depth read off them, the tangent turned and integrated step by step",
	of: () => {
		if (run(PYTHON, ["-c", "import scipy"]).status !== 0)
			return { absent: "no python3-scipy on this machine" };
		const worked = STARTERS.map(pathOf);
		const pairs = worked.flatMap((each) => each.pairs);
		return {
			version: worked[0].version,
			read: `results of ${STARTERS.length} starters`,
			checks: pairs.length,
			found: pairs
				.filter(({ here, there }) => !(Math.abs(here - there) <= NEAR))
				.map(({ where, here, there }) => ({ where, what: `${here} here, ${there} there` })),
		};
	},
};

export const numberJudges = [geodesics, paths];
