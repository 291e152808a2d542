/* Rows of declared figures as JSON, printed one by one: no tree of more than one row is built. */
#ifndef REPORT_JSON_JSON_ROWS_H
#define REPORT_JSON_JSON_ROWS_H

#include "report/json/json_value.h"

/* An array being printed: `between` comes before each row and the end. */
struct json_rows {
	struct sink *out;
	const char *between;
	int64_t printed;
};

/* Opens an array as one more key of an object; `lead` comes before the key. */
struct json_rows json_rows_open(struct sink *out, const char *key, const char *lead,
	const char *between);
/* Prints what comes before a row that the caller prints. */
void json_rows_next(struct json_rows *rows);
void json_rows_add(struct json_rows *rows, cJSON *row);
void json_rows_close(struct json_rows *rows);

/* The arrays of the whole takeoff: one row a line. */
struct json_rows json_top_open(struct sink *out, const char *key);
void json_top_close(struct json_rows *rows);

/* A row's figures that have a key, except rows that follow it. The caller owns the result. */
cJSON *json_object(const struct takeoff *takeoff, const struct figure_table *table,
	const void *row);
/* The value of one of them; null for what JSON does not have. */
cJSON *json_figure(const struct takeoff *takeoff, const struct figure *figure, const void *row);
/* Prints, with its key, a figure that follows the row. */
void json_after(struct sink *out, const struct takeoff *takeoff, const struct figure *figure,
	const void *row);
/* Prints the row as the next one; `more`, or NULL, adds further keys of the row by hand. */
void json_rows_print(struct json_rows *rows, const struct takeoff *takeoff,
	const struct figure_table *table, const void *row,
	void (*more)(struct sink *out, const void *row));

#endif
