import { changesSince } from "../changes/changes-since.ts";
import { crewBack, crewSignIn } from "../crew/back.ts";
import { crewLimits } from "../crew/limits.ts";
import { crewFigures, crewHead, crewNumbers } from "../crew/sheet.ts";
import { crewSteps } from "../crew/steps.ts";
import { crewStops } from "../crew/stops.ts";
import { answersTable, openQuestions } from "./answers.ts";
import { askedParts } from "./asked.ts";
import { barriersByPhase, singleFailuresTable } from "./barriers.ts";
import { casingTable, centralizersTable, holesTable, ratingsTable, stringFacts } from "./casing.ts";
import {
	designBasisFacts,
	hookLoadsTable,
	leastFactors,
	loadSituations,
	tightestFactors,
} from "./casing-design.ts";
import {
	cementContingency,
	cementFacts,
	cementRecords,
	cementSlurries,
	cementSummary,
	cementVolumes,
} from "./cement.ts";
import { cementPlacement } from "./cement-placement.ts";
import { deadlinesTable } from "./deadlines.ts";
import { keyDepths } from "./depths.ts";
import { deviations } from "./deviations.ts";
import { chemicalsTable, disclosureTable, flowbackFacts } from "./disclosure.ts";
import { afterCareTable, endOfLifeFacts, plugsTable } from "./end-of-life.ts";
import { annulusReadingsTable, bondLogTable, sealWorkTable } from "./evidence-of-isolation.ts";
import { figures } from "./figures.ts";
import { formsTable } from "./forms.ts";
import { fractureRange } from "./fractures.ts";
import { formationsTable, waterTable } from "./geology.ts";
import { circulatingTable, surgeTable } from "./hydraulics.ts";
import { exposureRadii } from "./hydrogen-sulfide.ts";
import { assumptionsTable, documentStatus, missingInformation, revisionsTable } from "./identity.ts";
import { ingredientsPlain } from "./ingredients.ts";
import {
	barriersTable,
	confiningTable,
	gapsTable,
	isolationFacts,
	layersTable,
	neighborsTable,
	offsetWellsTable,
	padWellsTable,
	zonesTable,
} from "./isolation.ts";
import { cementPressures, kickTable, preventersTable } from "./kicks-and-preventers.ts";
import { loadsByPhasePlain, noiseTable } from "./loads.ts";
import { undeterminedTable } from "./not-evaluated.ts";
import { notYetShown } from "./not-yet-shown.ts";
import { otherInputs } from "./other-inputs.ts";
import { padWells } from "./pad-wells.ts";
import type { Part } from "./part.ts";
import { curveFacts, drillStringTable, pathPlaces, surveyUncertainty } from "./path-places.ts";
import { callFirst, callLast, publicContacts, signature } from "./people.ts";
import { methods, references } from "./provenance.ts";
import { neighborWellsPlain, scheduleShort } from "./public.ts";
import { reviewAnswers, reviewHead } from "./review.ts";
import { reviewStatus } from "./review-status.ts";
import { openChecks } from "./rule-checks.ts";
import { ruleTable } from "./rule-table.ts";
import { rulesInFull, rulesNotApplied, textsCompared } from "./rules-in-full.ts";
import { sourServiceTable } from "./sour-service.ts";
import { clusterDepths, sleevesTable, stagesThatDiffer } from "./stage-details.ts";
import { stageRecords, treatmentAgainstPlan } from "./stage-records.ts";
import {
	additivesTable,
	proppantsTable,
	stageTable,
	stimulationTotals,
	treatmentSchedule,
	waterSources,
} from "./stimulation.ts";
import { annuliTable, annuliWorked, pressureBoundary, pressureTests, shoeTests } from "./tests-and-limits.ts";
import {
	pathTable,
	planAgainstSurvey,
	shoesAgainstPlan,
	surveyFacts,
	trajectoryFacts,
} from "./trajectory.ts";
import { enclosures, transmittalFacts, transmittalSignature } from "./transmittal.ts";
import {
	expectedPressure,
	limitedEntry,
	pressureLadder,
	reductionSensitivity,
	roughnessSensitivity,
	stageCourse,
	stagePressures,
} from "./treating-pressure.ts";

/** Every part that a page order may name. */
export const PARTS: Readonly<Record<string, Part>> = {
	"document-status": documentStatus,
	"review-answers": reviewAnswers,
	"review-head": reviewHead,
	"review-status": reviewStatus,
	deviations,
	"list-of-tables": ({ words }) => [
		{
			kind: "list-of",
			of: "tables",
			caption: words.label("captions.list_of_tables"),
		},
	],
	"attachment-tables": ({ words }) => [
		{ kind: "list-of", of: "tables", caption: words.label("captions.attachment_tables"), elsewhere: [] },
	],
	"attachment-figures": ({ words }) => [
		{ kind: "list-of", of: "figures", caption: words.label("captions.attachment_figures"), elsewhere: [] },
	],
	"list-of-figures": ({ words }) => [
		{
			kind: "list-of",
			of: "figures",
			caption: words.label("captions.list_of_figures"),
		},
	],
	"open-checks": openChecks,
	"changes-since": changesSince,
	"missing-information": missingInformation,
	"revisions-table": revisionsTable,
	"assumptions-table": assumptionsTable,
	"undetermined-table": undeterminedTable,
	"key-depths": keyDepths,
	"trajectory-facts": trajectoryFacts,
	"survey-facts": surveyFacts,
	"curve-facts": curveFacts,
	"path-places": pathPlaces,
	"survey-uncertainty": surveyUncertainty,
	"path-table": pathTable,
	"plan-against-survey": planAgainstSurvey,
	"shoes-against-plan": shoesAgainstPlan,
	"formations-table": formationsTable,
	"water-table": waterTable,
	"holes-table": holesTable,
	"casing-table": casingTable,
	"ratings-table": ratingsTable,
	"strings-table": stringFacts,
	"centralizers-table": centralizersTable,
	"drill-string-table": drillStringTable,
	"circulating-table": circulatingTable,
	"surge-table": surgeTable,
	"design-basis": designBasisFacts,
	"load-situations": loadSituations,
	"tightest-factors": tightestFactors,
	"least-factors": leastFactors,
	"hook-loads": hookLoadsTable,
	"sour-service": sourServiceTable,
	"cement-slurries": cementSlurries,
	"cement-volumes": cementVolumes,
	"cement-facts": cementFacts,
	"cement-summary": cementSummary,
	"cement-records": cementRecords,
	"cement-contingency": cementContingency,
	"cement-placement": cementPlacement,
	"cement-pressures": cementPressures,
	"kick-table": kickTable,
	"preventers-table": preventersTable,
	"pressure-tests": pressureTests,
	"shoe-tests": shoeTests,
	"pressure-boundary": pressureBoundary,
	"annuli-table": annuliTable,
	"annuli-worked": annuliWorked,
	"pressure-ladder": pressureLadder,
	"expected-pressure": expectedPressure,
	"stage-course": stageCourse,
	"roughness-sensitivity": roughnessSensitivity,
	"reduction-sensitivity": reductionSensitivity,
	"stage-pressures": stagePressures,
	"limited-entry": limitedEntry,
	"fracture-range": fractureRange,
	"disclosure-table": disclosureTable,
	"chemicals-table": chemicalsTable,
	"flowback-facts": flowbackFacts,
	"isolation-facts": isolationFacts,
	"barriers-table": barriersTable,
	"barriers-by-phase": barriersByPhase,
	"single-failures": singleFailuresTable,
	"zones-table": zonesTable,
	"gaps-table": gapsTable,
	"bond-log-table": bondLogTable,
	"seal-work-table": sealWorkTable,
	"annulus-readings-table": annulusReadingsTable,
	"plugs-table": plugsTable,
	"end-of-life-facts": endOfLifeFacts,
	"after-care-table": afterCareTable,
	"layers-table": layersTable,
	"confining-table": confiningTable,
	"pad-wells-table": padWellsTable,
	"neighbors-table": neighborsTable,
	"offset-wells-table": offsetWellsTable,
	"stimulation-totals": stimulationTotals,
	"treatment-schedule": treatmentSchedule,
	"stage-table": stageTable,
	"stage-records": stageRecords,
	"treatment-against-plan": treatmentAgainstPlan,
	"stages-that-differ": stagesThatDiffer,
	"cluster-depths": clusterDepths,
	"sleeves-table": sleevesTable,
	"water-sources": waterSources,
	"proppants-table": proppantsTable,
	"additives-table": additivesTable,
	"rule-table": ruleTable,
	"rules-in-full": rulesInFull,
	"rules-not-applied": rulesNotApplied,
	"texts-compared": textsCompared,
	"deadlines-table": deadlinesTable,
	"forms-table": formsTable,
	"exposure-radii": exposureRadii,
	methods,
	enclosures,
	"transmittal-facts": transmittalFacts,
	"transmittal-signature": transmittalSignature,
	references,
	contents: () => [{ kind: "contents" }],
	signature,
	"public-contacts": publicContacts,
	"call-first": callFirst,
	"call-last": callLast,
	"neighbor-wells-plain": neighborWellsPlain,
	"loads-by-phase-plain": loadsByPhasePlain,
	"noise-table": noiseTable,
	"pad-wells": padWells,
	"other-inputs": otherInputs,
	"ingredients-plain": ingredientsPlain,
	...askedParts,
	// Filled when the section is: it explains the words of the rest.
	"words-here": () => [],
	"crew-stops": crewStops,
	"crew-head": crewHead,
	"crew-figures": crewFigures,
	"crew-numbers": crewNumbers,
	"crew-steps": crewSteps,
	"crew-limits": crewLimits,
	"crew-back": crewBack,
	"crew-sign-in": crewSignIn,
	answers: answersTable,
	"not-yet-shown": notYetShown,
	"open-questions": openQuestions,
	"schedule-short": scheduleShort,
	...figures,
};
