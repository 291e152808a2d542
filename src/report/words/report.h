/* What every view of a takeoff needs. */
#ifndef REPORT_WORDS_REPORT_H
#define REPORT_WORDS_REPORT_H

#include "base/sink.h"
#include "takeoff/takeoff.h"

/* Which words are used: of a column of the text, or of a line on the panel. */
enum wording { WORDING_TEXT, WORDING_PANEL };

struct report {
	struct sink *out;    /* where the view is printed; NULL for one that keeps its lines */
	struct arena *words; /* for words; whatever prints a paragraph or a row clears it */
	const struct plot *plot;
	const struct takeoff *takeoff;
	enum units units;
	enum wording wording;
	const char *file;    /* the plot file's name; NULL where it is not shown */
	bool is_whole;       /* all parts of the text: explanations are left to each by itself */
};

#endif
