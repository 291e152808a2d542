/* Records of comma-separated values: Y. Shafranovich, RFC 4180, Common Format and MIME Type for
 * Comma-Separated Values (CSV) Files, IETF, October 2005, section 2. */
#ifndef REPORT_CSV_CSV_RECORD_H
#define REPORT_CSV_CSV_RECORD_H

#include "base/sink.h"

/* Prints `count` fields and CR LF; NULL: an empty field. In quotes, each quote doubled, are fields
 * with a quote, a comma or an end of line, and no others. */
void csv_record(struct sink *out, const char *const *fields, int count);

#endif
