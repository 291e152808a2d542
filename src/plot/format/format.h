/* The plot format, version 1: the only reader and the only writer. parterre-plot(5) describes
 * it. */
#ifndef PLOT_FORMAT_FORMAT_H
#define PLOT_FORMAT_FORMAT_H

#include "plot/plot.h"

enum { FORMAT_VERSION = 1, FORMAT_LINE_MOST = 4096, FORMAT_BYTES_MOST = 16 * 1024 * 1024 };

/* Reads a plot from length bytes. On success *plot (which must be empty) holds it all; else it
 * stays empty and d says the first error: its line and column, what was found, what was
 * expected. */
bool format_read(const char *bytes, size_t length, struct plot *plot, struct diag *d);

/* Appends the plot in canonical form: reading it gives an equal plot, writing that again the same
 * bytes. */
void format_write(const struct plot *plot, struct text *out);

/* The same without the ground's rows, for what changed besides its letters: read so, all ground is
 * open. */
bool format_read_details(const char *bytes, size_t length, struct plot *plot, struct diag *d);
void format_write_details(const struct plot *plot, struct text *out);

#endif
