#include "report/csv/csv_record.h"

#include <string.h>

static void quoted(struct sink *out, const char *field)
{
	sink_add(out, "\"");
	for (const char *quote; (quote = strchr(field, '"')); field = quote + 1) {
		sink_add_bytes(out, field, (size_t)(quote + 1 - field));
		sink_add(out, "\"");
	}
	sink_add(out, field);
	sink_add(out, "\"");
}

void csv_record(struct sink *out, const char *const *fields, int count)
{
	for (int i = 0; i < count; i++) {
		const char *field = fields[i] ? fields[i] : "";

		sink_add(out, i ? "," : "");
		if (strpbrk(field, "\",\r\n"))
			quoted(out, field);
		else
			sink_add(out, field);
	}
	sink_add(out, "\r\n");
}
