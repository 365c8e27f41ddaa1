import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { perforationFriction } from "./treating-pressure.ts";

/**
 * Rate into one of several clusters that share a pressure at the casing: where the rock is harder to open, less goes in.
 *
 * The pressure is found by halving, since every cluster takes more as it rises, so that their rates sum to the pumps'.
 */
export const clusterRate = formula({
	id: "stimulation/cluster-rate",
	name: "Rate into a cluster (limited entry)",
	expression: "Δσ_k + 0.2369 q_k² ρ / (N² d⁴ C_d²) = P for every open cluster, Σ q_k = Q",
	source: cite("bell-sukup-tariq-1995", "p. 79, perforation friction, at each cluster with its own stress"),
	inputs: {
		Q: "flow-rate",
		ρ: "density",
		N: "count",
		d: "diameter",
		C_d: "ratio",
		Δσ: { many: "pressure" },
		k: "count",
	},
	gives: "flow-rate",
	validity:
		"N perforations in each cluster, alike; stress differences above the easiest cluster's; the same near-wellbore loss at each",
	compute: ({ Q, ρ, N, d, C_d, Δσ, k }) => clusterRates({ Q, ρ, N, d, C_d, Δσ })[k - 1] ?? Number.NaN,
});

interface Entry {
	readonly Q: number;
	readonly ρ: number;
	readonly N: number;
	readonly d: number;
	readonly C_d: number;
	readonly Δσ: readonly number[];
}

const HALVINGS = 200;

const clusterRates = ({ Q, ρ, N, d, C_d, Δσ }: Entry): readonly number[] => {
	const atOne = Number(perforationFriction.compute({ Q: 1, ρ, N, d, C_d } as never));
	if (!(atOne > 0) || Δσ.length === 0) return [];
	const rates = (pressure: number) => Δσ.map((stress) => Math.sqrt(Math.max(0, pressure - stress) / atOne));
	const sum = (all: readonly number[]) => all.reduce((total, q) => total + q, 0);
	let low = Math.min(...Δσ);
	let high = Math.max(...Δσ) + atOne * Q ** 2;
	for (let i = 0; i < HALVINGS; i++) {
		const middle = (low + high) / 2;
		if (sum(rates(middle)) < Q) low = middle;
		else high = middle;
	}
	const found = rates(high);
	// The last bits of the pressure are spread over the clusters, so that nothing pumped is lost.
	const scale = sum(found) > 0 ? Q / sum(found) : Number.NaN;
	return found.map((q) => q * scale);
};
