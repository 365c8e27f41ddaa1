import { message } from "../../messages/message.ts";
import { missingAt } from "../case.ts";
import { absent, known, type Measure } from "./reading.ts";

/** Noise where people live, against what was promised or prescribed for it. */
export const noiseMeasures = {
	"noise at the nearest dwelling": {
		noun: message("rules/noise-at-the-nearest-dwelling"),
		read: ({ well, results }) => {
			const { noise } = well.safety ?? {};
			if (noise?.limit === undefined) return absent(message("rules/no-limit-on-noise-is-stated"));
			return known(
				results.safety?.noise_at_nearest_dwelling?.level,
				missingAt(message("rules/distance-to-a-dwelling"), "site", "neighbors"),
			);
		},
		say: ({ part }, { results }) => [
			message("rules/noise-at-dwelling-is", {
				name: results.safety?.noise_at_nearest_dwelling?.name ?? "",
				part,
			}),
		],
	},
	"stated limit on noise": {
		noun: message("rules/stated-limit-on-noise"),
		read: ({ well }) =>
			known(
				well.safety?.noise?.limit?.level,
				missingAt(message("rules/stated-limit-on-noise"), "safety", "noise", "limit"),
			),
		say: ({ part }) => [message("rules/limit-on-noise-is", { part })],
	},
} as const satisfies Readonly<Record<string, Measure>>;
