/* The sun over the plan, while that is shown: how many hours of it cells have in the mean of the
 * usual days (sun_usual.h), or on which of them it shines at one moment. */
#ifndef EDITOR_LIGHT_H
#define EDITOR_LIGHT_H

#include "editor/editor.h"
#include "takeoff/sun/sun_shadows.h"
#include "takeoff/sun/sun_usual.h"

enum { QUARTERS_AN_HOUR = 4 };

/* Whoever shows it has it, for as long as the plot does not change. */
struct moment {
	struct date date;
	int quarter; /* of an hour of solar time, from midnight on */
	struct sun_shadows shadows;
};

struct light {
	const struct editor *editor;
	bool is_asked;              /* the plan is to show some */
	const struct moment *moment; /* its shadows; NULL: hours */
	const uint16_t *steps;      /* by cell, as pages_sun has them; NULL: none are there that
	                             * hold */
};

/* Holds until the editor changes. */
struct light light_of(const struct editor *editor);
/* Whether there is light to show, and whether a cell has some: fixtures and houses have none. */
bool light_is_there(const struct light *light);
bool light_has_cell(const struct light *light, struct place cell);
/* Of a cell that has: its class by its hours; of a moment full sun or shade. */
enum sun_class light_class(const struct light *light, struct place cell);
/* What says the same without colours: a cell's hours as sun_sign has them; of a moment a stroke
 * where there is shade. '\0': nothing, as where a cell has none. */
enum { LIGHT_SHADE_SIGN = '/' };
char light_sign(const struct light *light, struct place cell);

/* Why no hours are there although they are asked for: what is missing, or that they are being
 * counted. */
const char *light_missing_words(const struct editor *editor);
/* "2026-06-21 9:15 solar time: sun 41.2 degrees high, bearing 98.3", or in less words; in
 * report->words. */
const char *light_moment_words(const struct report *report, const struct moment *moment,
	bool in_full);

#endif
