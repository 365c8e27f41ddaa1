import { type Paper, READER_PAPERS } from "../document/document.ts";

/** The papers a field may appear in unless the definition narrows it further. */
export type Audience = readonly Paper[];

/** Fit for anybody: depths, materials, durations, the operator's name. */
export const EVERY: Audience = READER_PAPERS;
/** The public papers and the regulator's, and the presenter's own; nothing a crew acts on. */
export const PUBLIC: Audience = ["regulator", "landowner", "handout", "answers"];
/** Engineering detail for the regulator and the rig, kept out of what is handed to the public. */
export const TECHNICAL: Audience = ["regulator", "answers", "crew"];
/** For the file: the regulator's copy and the presenter's look-up. */
export const RECORD: Audience = ["regulator", "answers"];
/** Persons, licenses and private records: the regulator's copy alone. */
export const PRIVATE: Audience = ["regulator"];
/** What the people on location need and nobody else. */
export const CREW: Audience = ["crew"];
/** Told to the crew and looked up by the presenter: site safety arrangements. */
export const SITE: Audience = ["crew", "answers"];
/** Steers the tool and is printed only where a paper explains its own settings. */
export const SETTING: Audience = ["regulator", "answers"];
