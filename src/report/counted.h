/* A plot read from a file and counted, with its price book. */
#ifndef REPORT_COUNTED_H
#define REPORT_COUNTED_H

#include "takeoff/takeoff.h"

struct counted {
	struct plot plot;
	struct book book;
	char *book_path; /* NULL: none */
	struct arena arena;
	struct takeoff takeoff;
};

/* Reads the plot in a file, "-" being standard input, and counts it by the book `prices`, else by
 * the one that the plot names, if any. False where a file cannot be read; it has complained then.
 * To be freed with counted_fini in any case. */
bool counted_read(struct counted *out, const char *path, const char *prices);
/* The same, but takeoff_compute alone: for whoever counts hours of sun himself, and shows no
 * snags. */
bool counted_read_for_sun(struct counted *out, const char *path, const char *prices);
void counted_fini(struct counted *counted);
/* What to call the file: its path's last part. */
const char *counted_name(const char *path);

#endif
