/** English: the pictures of the sequence and of the slides. */
export const PICTURES = {
	frameProtected: "protected water to",
	frameInset: "Close-up, not to scale",
	frameScale:
		"Depth is to scale, and the same scale in every picture. Widths, distances sideways and close-ups are not.",
	frameScaleShort: "Depth is to scale. Widths and close-ups are not.",
	talkMap: "The well and the nearest places, from above",
	talkMapShows: "North is up. Distances are from the path of the well; to another well, from hole to hole.",
	talkMapScale:
		"To scale. Distances are from the path of the well, seen from above; to another well, from hole to hole.",
	talkHoleToHole: "{distance}, hole to hole",
	talkSection: "The well from the side",
	talkSectionScale: "To scale, the same up and sideways.",
	talkSectionModels:
		"To scale, the same up and sideways. The cracks are by simple models: a range, not a promise.",
	talkWater: "Protected water, to {depth} down",
	talkThisWell: "This well, to {depth} down",
	talkCracks: "Cracks, by models: {least} to {most} tall",
	talkDeep: "{depth} deep",
	talkBars: "Bars are to scale.",
	talkLayers: "From the inside of the well to the rock, where the protected water ends",
	talkLayersScale: "Thicknesses are not to scale. Left: inside the well. Right: rock and water.",
	talkSteel: "Steel: {string}",
	talkCement: "Cement around it",
	talkFluid: "Gap with fluid",
	talkRun: "in place",
} as const;
