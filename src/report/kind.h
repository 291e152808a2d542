/* What a takeoff is printed as: one rule for the command line and the screen. */
#ifndef REPORT_KIND_H
#define REPORT_KIND_H

#include "base/sink.h"
#include "report/text/parts.h"
#include "takeoff/takeoff.h"

enum report_kind {
	REPORT_TEXT, /* for people */
	REPORT_JSON, /* for programs */
	REPORT_CSV   /* for spreadsheets: the items alone */
};

/* By how the file's name ends: .json, .csv, else text. */
enum report_kind report_kind_of(const char *path);
/* Prints it so. parts: of the text (report/text/parts.h); name: the plot file's, which text shows.
 * Pure. */
void report_print(enum report_kind kind, unsigned parts, struct sink *out, const struct plot *plot,
	const struct takeoff *takeoff, const char *name);

#endif
