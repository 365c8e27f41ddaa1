import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";

const curve = { t_i: { many: "duration" }, s_i: { many: "pressure" } } as const;

const sorted = (t: readonly number[], s: readonly number[]) =>
	t.map((time, i) => ({ time, strength: s[i] ?? Number.NaN })).sort((a, b) => a.time - b.time);

/** Strength at a time [psi], on the straight line between two tests. */
export const strengthAfter = formula({
	id: "cement/strength-after",
	name: "Compressive strength after a time",
	expression:
		"s(t) between tests, by the straight line; before the first, in proportion to time; after the last, the last",
	source: cite("common-practice", "cement gains strength; a straight line lies under a curve that flattens"),
	inputs: { ...curve, t: "duration" },
	gives: "pressure",
	validity:
		"tests of the blend that is pumped, at the temperature of the hole; before the first test a guess on the high side",
	compute: ({ t_i, s_i, t }) => {
		const points = [{ time: 0, strength: 0 }, ...sorted(t_i, s_i)];
		for (const [i, point] of points.entries()) {
			const next = points[i + 1];
			if (next === undefined) return { value: point.strength, branch: "the last test" };
			if (t > next.time) continue;
			const share = next.time > point.time ? (t - point.time) / (next.time - point.time) : 1;
			return {
				value: point.strength + share * (next.strength - point.strength),
				branch: i === 0 ? "before the first test" : "between two tests",
			};
		}
		return Number.NaN;
	},
});

/** Time to a strength [min]. */
export const timeToStrength = formula({
	id: "cement/time-to-strength",
	name: "Time to a compressive strength",
	expression: "t where s(t) = s, by the straight line between tests",
	source: cite("common-practice", "cement gains strength; a straight line lies under a curve that flattens"),
	inputs: { ...curve, s: "pressure" },
	gives: "duration",
	validity:
		"a strength no greater than the greatest tested; one below the first test is dated by the first test",
	compute: ({ t_i, s_i, s }) => {
		const points = sorted(t_i, s_i);
		for (const [i, point] of points.entries()) {
			if (point.strength < s) continue;
			const before = points[i - 1];
			if (before === undefined) return { value: point.time, branch: "by the first test" };
			const share = (s - before.strength) / (point.strength - before.strength);
			return {
				value: before.time + share * (point.time - before.time),
				branch: "between two tests",
			};
		}
		return Number.NaN;
	},
});

/** The later of the planned wait and the strength [min]. */
export const drillOutFrom = formula({
	id: "cement/drill-out-from",
	name: "Drilling out and testing from",
	expression: "the later of the wait on cement and the time to strength",
	source: cite("common-practice", "nothing disturbs the cement before both"),
	inputs: { wait: "duration", t_s: "duration" },
	gives: "duration",
	compute: ({ wait, t_s }) =>
		wait >= t_s ? { value: wait, branch: "the planned wait" } : { value: t_s, branch: "the strength" },
});

/** Minutes from mixing a slurry to the landing of the plug. */
export const timeInUse = formula({
	id: "cement/time-in-use",
	name: "Time from mixing to the landing of the plug",
	expression: "t_end − t_mixed",
	source: cite("definition"),
	inputs: { t_end: "duration", t_mixed: "duration" },
	gives: "duration",
	compute: ({ t_end, t_mixed }) => Math.max(0, t_end - t_mixed),
});
