/* What somebody may have meant who typed a number without its unit. */
#ifndef SCREEN_OFFER_H
#define SCREEN_OFFER_H

#include "plot/value.h"

/* Gives each bare number of a length, a size, a percentage or a density the unit that makes it a
 * good value: inches before feet, millimetres before metres. False, *out untouched, where none
 * does. */
bool offer_units(const struct value_rule *rule, enum units units, const char *typed,
	struct text *out);

#endif
