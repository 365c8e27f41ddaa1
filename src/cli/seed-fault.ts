/** A shipped table, template or rules file that is bad; the message is the faults as they are told. */
export class SeedFault extends Error {}
