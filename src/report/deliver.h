/* Writing a takeoff to a file without harm: one rule for the command line and the screen. */
#ifndef REPORT_DELIVER_H
#define REPORT_DELIVER_H

#include "base/file.h"

enum delivery {
	DELIVERY_DONE,
	DELIVERY_WOULD_REPLACE, /* another file than a takeoff is there: nothing written */
	DELIVERY_FAILED         /* nothing written; error says why */
};

/* Writes the content to path atomically: never onto the plot itself or anything that is not a
 * regular file, and over another file only if that is a takeoff or `force` is set. error is
 * filled for all but DELIVERY_DONE. */
enum delivery report_deliver(const char *path, const struct file_content *content,
	const char *plot_path, bool force, struct file_error *error);

#endif
