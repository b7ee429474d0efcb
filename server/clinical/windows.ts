/** Times that the engine decides by, in days. All are common practice; the local protocol takes precedence. */

/** An injury or a dislocation is acute under six weeks, and old from then on. */
export const ACUTE_DAYS = 42;
/** A course without operation is judged from six weeks on. */
export const COURSE_JUDGED_DAYS = 42;
/** A course without operation is complete at twelve weeks. */
export const COURSE_COMPLETE_DAYS = 84;
/** No operation within three months of a steroid injection; the three months come from joint replacement (from memory). */
export const STEROID_CLEAR_DAYS = 91;
