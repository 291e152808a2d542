/* What somebody may have meant who typed a number without its unit. */
#ifndef EDITOR_ASK_OFFER_H
#define EDITOR_ASK_OFFER_H

#include "plot/value.h"

/* What was asked for. */
struct asked {
	const struct value_rule *rule;
	enum units units;
	bool is_far; /* the larger units come first */
};

/* Gives each bare number of a length, a size, a percentage or a density the first unit that makes
 * it a good value: of inches and feet; of millimetres, centimetres and metres. Where none does,
 * false, and *out has the first unit all the same, so that its fault can be said; *out is empty
 * where no number was bare. */
bool offer_units(const struct asked *asked, const char *typed, struct text *out);

#endif
