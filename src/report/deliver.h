/* Writing a takeoff, a plan or drawing by itself, or a comparison of two, to a file without harm:
 * one rule for the command line and the screen. */
#ifndef REPORT_DELIVER_H
#define REPORT_DELIVER_H

#include "base/file.h"

enum delivery {
	DELIVERY_DONE,
	/* Another file than such a one is there, or one for a spreadsheet: nothing written. */
	DELIVERY_WOULD_REPLACE,
	DELIVERY_FAILED         /* nothing written; error says why */
};

/* What it is made of, and may never be written over: files by their paths, "-" being
 * standard input. NULL: no book; `other`: what it is compared with, NULL: nothing. */
struct delivery_from {
	const char *plot, *book;
	const struct delivery_from *other;
};

/* Writes the content to path atomically: never onto what it is made of or anything that is not a
 * regular file, and over another file only if that is one of them too, text or JSON, or `force` is
 * set: a table may have been filled in. error is filled for all but DELIVERY_DONE. */
enum delivery report_deliver(const char *path, const struct file_content *content,
	const struct delivery_from *from, bool force, struct file_error *error);

#endif
