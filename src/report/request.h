/* The options and files of a command that prints. */
#ifndef REPORT_REQUEST_H
#define REPORT_REQUEST_H

#include <stdbool.h>

enum { REQUEST_PLOTS = 2 };

struct request {
	const char *plots[REQUEST_PLOTS];
	const char *output; /* NULL: standard output */
	const char *prices; /* NULL: the books that the plots name, if any */
	bool json, force;
};

/* Reads the words after the command, argv[0], which takes so many plots. False where one is not
 * understood; it has complained then. */
bool request_read(struct request *request, int argc, char **argv, int plots);

#endif
