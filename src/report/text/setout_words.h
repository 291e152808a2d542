/* Words of the set-out, for its paper and its page: offsets to 1/8 in or 1 mm. */
#ifndef REPORT_TEXT_SETOUT_WORDS_H
#define REPORT_TEXT_SETOUT_WORDS_H

#include "report/words/words.h"
#include "takeoff/setout/setout.h"

/* Of the takeoff that is reported, which must not have been stopped; in the arena. */
struct setout setout_of(const struct report *report, struct arena *arena);

/* Room to write down what was measured. */
#define MEASURED "____"

/* "5 ft 7 7/8 in", to be read on a tape; "67 7/8 in", "-3 1/2 in", on a staff. */
const char *tape_words(const struct report *report, nm length);
const char *reading_words(const struct report *report, nm drop);
/* "12 ft 4 in from \"House corner\"". */
const char *tie_words(const struct report *report, const struct tie *tie);
/* "the datum", "8 ft across, 2 ft down": what is tied. */
const char *tied_place_words(const struct report *report, const struct setout *setout,
	const struct tie *tie);
/* "3 ft down", "2 ft across": where a string is. */
const char *string_place_words(const struct report *report, const struct setout_string *string);
/* "base line; Pickets, B1, P1 and 2 more": what it guides; "" where that is nothing. */
const char *guides_words(const struct report *report, const struct setout *setout,
	const struct setout_string *string);
/* "3", "post 4", "post 2.4", "gate G1": what a point is called; and where along its string:
 * "3 ft", of a gate "3 ft to 7 ft". */
const char *point_name_words(const struct report *report, const struct setout_point *point);
const char *point_place_words(const struct report *report, const struct setout_string *string,
	const struct setout_point *point);
/* Sentences on where strings cross the boards. */
const char *ends_words(const struct report *report, const struct setout *setout);
/* A sentence on how the plan's corners are squared. */
const char *square_words(const struct report *report, const struct setout *setout);
/* " Walls: ... inner faces lie inside by 8 in (b Raised bed)."; "" where there is none. */
const char *faces_words(const struct report *report);

#endif
