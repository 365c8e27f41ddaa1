import { javaClasses, versionOnPath } from "./java.mjs";
import { casebound, run } from "./run.mjs";

const FOOT = 0.3048;
const STARTERS = ["horizontal", "horizontal-as-built", "vertical-metric"];

/** Semi-major axis [m] and flattening of each datum's ellipsoid: GRS 80, WGS 84, Clarke 1866. */
const ELLIPSOIDS = {
	nad83: [6378137, 1 / 298.257222101],
	wgs84: [6378137, 1 / 298.257223563],
	nad27: [6378206.4, (6378206.4 - 6356583.8) / 6378206.4],
};

/** Distances and directions between two places that the starters' results carry, with what they were worked from. */
const geodesicsOf = (starter) => {
	const { values, inputs } = JSON.parse(casebound(["results", `seeds/starters/${starter}.yaml`]).stdout);
	const figure = (key) => {
		const found = values[key] ?? inputs[key];
		return typeof found === "string" ? figure(found) : found.value;
	};
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

export const numberJudges = [geodesics];
