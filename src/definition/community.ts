import type * as z from "zod";
import { PUBLIC } from "./audience.ts";
import { group, optional, text } from "./field.ts";

const answer = (question: string) =>
	optional(text(question, "Neighbors ask this, and no calculation answers it.", PUBLIC));

/** The operator's own words for questions that no calculation answers. */
export const community = group(
	"Community",
	"The operator's own words; what is missing is listed for the presenter.",
	PUBLIC,
	{
		water_testing: answer("Who tests our water, when, and who pays?"),
		water_flow_testing: answer("Do you test how much my well gives, as well as what is in it?"),
		cement_shortfall: answer("What do you do if the cement is not good?"),
		corrosion: answer("What if the pipe leaks or rusts over the years?"),
		faults: answer("Are there faults near, and how do you know?"),
		waste: answer("Where does the waste go, and are the tanks covered?"),
		dust: answer("How do you keep the dust down?"),
		hauling_hours: answer("When do the trucks run?"),
		lights: answer("Will there be lights at night?"),
		noise: answer("What do you do about the noise?"),
		shaking: answer("Will the ground shake, and who watches for it?"),
		emergency: answer("What happens in an emergency?"),
		fire_department: answer("Is the fire department ready for this?"),
		air_testing: answer("Do you test the air, and can we see the results?"),
		flaring: answer("Will there be a flare?"),
		spills: answer("What if something spills?"),
		site_walls: answer("What are the walls for?"),
		pad_afterwards: answer("What stays when you leave?"),
		treating_again: answer("Will you come back and do it again?"),
		producing_life: answer("How long will the well produce?"),
		plugging: answer("What happens at the end, and who pays?"),
		old_wells: answer("How do you know the old wells nearby are sealed?"),
		inspections: answer("Who checks your work?"),
		workers: answer("Who are the workers, and are they screened?"),
		gathering_lines: answer("Will pipelines cross our land?"),
		road_damage: answer("Who pays for the road?"),
		record: answer("Has this ever gone wrong for you?"),
		damage: answer("Who pays if a neighbor's water is harmed?"),
		radioactivity: answer("Is what comes up radioactive, and who checks?"),
	},
);

export type Community = z.output<typeof community>;
