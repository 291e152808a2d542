/* The options and files of a command that prints. */
#ifndef REPORT_REQUEST_H
#define REPORT_REQUEST_H

#include "report/drawing_option.h"
#include "report/kind.h"
#include "takeoff/sun/sun_hours.h"

enum { REQUEST_PLOTS = 2 };

/* What a command takes. */
struct accepted {
	int plots;
	bool prices, json, csv, only, drawing, days;
};

struct request {
	const char *plots[REQUEST_PLOTS];
	const char *output; /* NULL: standard output */
	const char *prices; /* NULL: the books that the plots name, if any */
	enum report_kind kind; /* one that is accepted; asked for, else by the name of the output */
	unsigned parts;  /* of the text (report/text/parts.h): those asked for, else all */
	struct svg_asked drawing;
	struct date days[SUN_DAYS_MOST]; /* those asked for */
	int day_count;
	bool force;
	bool is_list;    /* only which parts there are is asked for; there may be no plot then */
};

/* Reads the words after the command, argv[0]. False where one is not understood; it has complained
 * then. */
bool request_read(struct request *request, int argc, char **argv,
	const struct accepted *accepted);

#endif
