/** One unit of a dimension: how it is printed, how it may be written, and its size in SI. */
export interface Unit {
	readonly symbol: string;
	/** As papers print it where that is not the symbol: a word in the plural. */
	readonly printed?: string;
	/** Further accepted spellings; matching ignores letter case unless `caseMatters`. */
	readonly spellings?: readonly string[];
	/** Size of one unit in the dimension's SI unit. */
	readonly si: number;
	/** SI value of the unit's zero, for scales such as °F. */
	readonly zero?: number;
	/** True where the symbol in another letter case means something else (MPa and mPa, m and M); spellings stay free. */
	readonly caseMatters?: boolean;
}

export interface DimensionDefinition {
	/** Symbol of the unit that the calculation core works in. */
	readonly canonical: string;
	readonly units: readonly Unit[];
	/** How a paper prints it unless the paper says otherwise. */
	readonly field: { readonly unit: string; readonly decimals: number };
	readonly metric: { readonly unit: string; readonly decimals: number };
	/** A value as somebody would write it; shown in error messages. */
	readonly example: string;
	/** Whether a value below zero has a meaning. */
	readonly signed?: boolean;
}
