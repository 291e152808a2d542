/* Where a command puts what it prints. */
#ifndef REPORT_OUTPUT_H
#define REPORT_OUTPUT_H

#include "report/deliver.h"
#include "report/request.h"

/* Prints the content to standard output or into the file asked for, which is none of those it is
 * made `from`. Returns the exit status, 0 or 2; it has complained then. */
int output_print(const struct request *request, const struct file_content *content,
	const struct delivery_from *from);

#endif
