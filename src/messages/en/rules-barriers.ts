import type { Entries } from "../entries.ts";

/** Barriers of each phase and single failures, as findings say them. */
export const RULES_BARRIERS = {
	"rules/barriers-short": [
		"barriers short of the number required",
		"Noun phrase without its article: what is measured or is missing (barriers).",
	],
	"rules/barriers-hold": [
		"no phase is short of a barrier",
		"Clause without a full stop: why a limit came out as it did (barriers).",
	],
	"rules/barriers-are-short": [
		"{phase}: {standing} of {required} barriers hold ({why})",
		"Clause without a full stop: why a limit came out as it did (barriers). phase: drilling the production hole, treating; standing, required: counts; why: what does not hold.",
	],
	"rules/barrier-element-fails": [
		"{element}: {state}",
		"One element that does not hold, in brackets after the count (barriers). element: casing, packer; state: why it does not count.",
	],
	"rules/barrier-element-of": [
		"{string} {element}",
		"An element of a string (barriers). string: a string's short name, as typed; element: casing, packer.",
	],
	"rules/barrier-missing": [
		"{element}, {phase}",
		"Noun phrase: an element of a barrier that is not stated (barriers). element: packer, tree; phase: producing.",
	],
	"rules/no-barrier-elements": ["no element is described", "Why a barrier does not count (barriers)."],
	"rules/no-phase-with-barriers": [
		"no hole is drilled out of a string, treated or produced",
		"Clause without a full stop: why a limit came out as it did (barriers).",
	],
	"rules/barrier-phase-drilling": [
		"drilling the {of} hole",
		"A part of the well's life (barriers). of: a hole's short name, as typed.",
	],
	"rules/barrier-phase-cementing": [
		"cementing the {of} casing",
		"A part of the well's life (barriers). of: a string's short name, as typed.",
	],
	"rules/barrier-phase-treating": ["treating", "A part of the well's life (barriers)."],
	"rules/barrier-phase-producing": ["producing", "A part of the well's life (barriers)."],
	"rules/barrier-phase-shut-in": ["shut in", "A part of the well's life (barriers)."],
	"rules/barrier-state-lighter": [
		"lighter than the pore pressure",
		"Why an element does not count (barriers).",
	],
	"rules/barrier-state-no-cement": [
		"none is planned",
		"Why an element does not count: no cement (barriers).",
	],
	"rules/barrier-state-rated": [
		"rated below the pressure that a leak brings",
		"Why an element does not count (barriers).",
	],
	"rules/barrier-state-taken-out": ["stated not to count", "Why an element does not count (barriers)."],
	"rules/factor-after-failure": [
		"least factor after a single failure",
		"Noun phrase without its article: what is measured or is missing (barriers).",
	],
	"rules/no-failure-to-walk-through": [
		"no single failure brings pressure onto what is behind it",
		"Clause without a full stop: why a limit came out as it did (barriers).",
	],
	"rules/failure-leaves": [
		"a factor of {part} is left after {failure}",
		"Clause without a full stop: why a limit came out as it did (barriers). failure: a leak of a hanger seal, of a packer; part: the value.",
	],
	"rules/failure-hanger-seal": [
		"a leak of the {string} hanger seal",
		"Noun phrase: an element that fails (barriers). string: a string's short name, as typed.",
	],
	"rules/failure-floats": [
		"failed floats of the {string} casing",
		"Noun phrase: an element that fails (barriers). string: a string's short name, as typed.",
	],
	"rules/failure-packer": [
		"a packer leak in the {string} casing",
		"Noun phrase: an element that fails (barriers). string: a string's short name, as typed.",
	],
	"rules/failure-tubing": [
		"a tubing leak in the {string} casing",
		"Noun phrase: an element that fails (barriers). string: a string's short name, as typed.",
	],
	"rules/failure-treated-string": [
		"a leak of the {string} casing while treating",
		"Noun phrase: an element that fails (barriers). string: a string's short name, as typed.",
	],
	"rules/barrier-element-fluid-column": ["fluid column", "An element of a barrier (barriers)."],
	"rules/barrier-element-casing": ["casing", "An element of a barrier (barriers)."],
	"rules/barrier-element-casing-cement": ["casing cement", "An element of a barrier (barriers)."],
	"rules/barrier-element-wellhead": ["wellhead", "An element of a barrier (barriers)."],
	"rules/barrier-element-preventers": ["preventers", "An element of a barrier (barriers)."],
	"rules/barrier-element-diverter": ["diverter", "An element of a barrier (barriers)."],
	"rules/barrier-element-floats": ["floats", "An element of a barrier (barriers)."],
	"rules/barrier-element-plug": ["plug", "An element of a barrier (barriers)."],
	"rules/barrier-element-packer": ["packer", "An element of a barrier (barriers)."],
	"rules/barrier-element-tubing": ["tubing", "An element of a barrier (barriers)."],
	"rules/barrier-element-safety-valve": ["safety valve", "An element of a barrier (barriers)."],
	"rules/barrier-element-production-tree": ["production tree", "An element of a barrier (barriers)."],
} as const satisfies Entries;
