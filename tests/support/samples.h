/* Texts that people type, of many scripts, with accents composed and not, joined and wide and from
 * right to left; and some that no plot holds. */
#ifndef SUPPORT_SAMPLES_H
#define SUPPORT_SAMPLES_H

#include <stdbool.h>

enum { SAMPLES = 100 };

struct sample {
	const char *text; /* UTF-8, at most 60 bytes: as one types it, not as one pastes */
	bool is_kept;     /* a plot can hold it */
};
extern const struct sample samples[]; /* that many, then a NULL */

#endif
