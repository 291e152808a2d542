/* A plot in a folder of its own and the program at a terminal on it: where tests of the screen
 * sit.
 *
 *	struct table at;
 *
 *	table_sit(&at, "court.plot", 24, 80);
 *	terminal_keys(at.t, "space");
 *	terminal_wait(at.t, "not saved");
 *	table_leave(&at);
 */
#ifndef SUPPORT_TABLE_H
#define SUPPORT_TABLE_H

#include "base/text.h"
#include "support/terminal.h"

struct table {
	char *folder, *plot;   /* the plot's path is in the folder; the table's own */
	struct terminal *t;    /* NULL until the program runs; the table's own */
};

/* A path of that name, with no file there yet; and what the file then holds. */
void table_clear(struct table *at, const char *name);
void table_write(const struct table *at, const char *plot);

/* A copy of one of the plots in tests/plots. The court, "court.plot", is 14 by 8 cells of 1 ft,
 * mirrored left-right with one fault, the p on 1,4; a b is in hand. */
void table_lay_out(struct table *at, const char *name);

/* Starts the program on the plot, and waits for nothing: at the table's own terminal, or at one
 * more, which the caller frees. how->argv is not looked at; NULL for how: as struct launch says. */
void table_start(struct table *at, const struct launch *how);
struct terminal *table_start_another(const struct table *at, const struct launch *how);

/* The same from the prompt of a shell, so that it can be stopped and taken up again. */
void table_start_in_shell(struct table *at);

/* Waits until the first picture is whole: the end of its last row comes last. */
void table_wait(struct terminal *t);

/* A copy of one of them, the program started on it, the first picture whole. */
void table_sit(struct table *at, const char *name, int rows, int columns);

/* What a file of the folder holds now; to be cleaned up with text_fini. */
struct text table_file(const struct table *at, const char *name);
/* Fails the test unless the plot's file holds this part. */
void table_check_file(const struct table *at, const char *part);
/* Saves first, at rest. */
void table_check_saved(const struct table *at, const char *part);

/* Whether work that was not saved is kept beside the plot for the next start. */
bool table_has_rescue(const struct table *at);

void table_leave(struct table *at);

#endif
