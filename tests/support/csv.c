#include "support/csv.h"
#include "report/csv/csv.h"
#include "support/json.h"
#include "support/scratch.h"

#include <check.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static const char reader[] = "python3 -c 'import csv, json, sys; print(json.dumps(list(csv.reader("
	"open(sys.argv[1], newline=\"\", encoding=\"utf-8\"), strict=True))))' '%s'";

static void put(const char *path, const struct text *csv)
{
	FILE *file = fopen(path, "w");

	ck_assert(file && fwrite(csv->bytes, 1, csv->length, file) == csv->length);
	ck_assert_int_eq(fclose(file), 0);
}

static cJSON *read_back(const char *path)
{
	struct text command = TEXT_EMPTY;
	char *json = NULL;
	size_t capacity = 0;
	FILE *from;
	cJSON *records;

	text_print(&command, reader, path);
	from = popen(command.bytes, "r");
	ck_assert(from && getdelim(&json, &capacity, '\0', from) > 0);
	ck_assert_int_eq(pclose(from), 0);
	records = cJSON_Parse(json);
	ck_assert_ptr_nonnull(records);
	free(json);
	text_fini(&command);
	return records;
}

cJSON *csv_records(const struct text *csv)
{
	char *folder = scratch_new();
	struct text path = TEXT_EMPTY;
	cJSON *records;

	text_print(&path, "%s/table.csv", folder);
	put(path.bytes, csv);
	records = read_back(path.bytes);
	text_fini(&path);
	scratch_remove(folder);
	return records;
}

cJSON *csv_of(struct garden *garden, struct text *text)
{
	struct text_sink sink = text_sink(text);
	cJSON *records, *names, *rows = cJSON_CreateArray();
	const cJSON *record;

	text_clear(text);
	garden_count(garden);
	report_csv(&sink.sink, &garden->plot, &garden->takeoff);
	records = csv_records(text);
	names = cJSON_DetachItemFromArray(records, 0);
	cJSON_ArrayForEach(record, records) {
		cJSON *row = cJSON_CreateObject();

		ck_assert_int_eq(cJSON_GetArraySize(record), cJSON_GetArraySize(names));
		for (int i = 0; i < cJSON_GetArraySize(names); i++)
			cJSON_AddStringToObject(row, cJSON_GetArrayItem(names, i)->valuestring,
				cJSON_GetArrayItem(record, i)->valuestring);
		cJSON_AddItemToArray(rows, row);
	}
	cJSON_Delete(names);
	cJSON_Delete(records);
	return rows;
}

const char *csv_get(const cJSON *row, const char *column)
{
	return json_get(row, column)->valuestring;
}

double csv_number(const cJSON *row, const char *column)
{
	const char *field = csv_get(row, column);
	size_t length = strlen(field), digits = strspn(field, "0123456789");

	if (length == 0)
		return NAN;
	ck_assert_uint_gt(digits, 0);
	if (field[digits] == '.')
		digits += 1 + strspn(field + digits + 1, "0123456789");
	ck_assert_msg(digits == length && field[length - 1] != '.', "%s: %s", column, field);
	return strtod(field, NULL);
}

void csv_is(const cJSON *row, const char *column, const char *expected)
{
	ck_assert_msg(strcmp(csv_get(row, column), expected) == 0, "%s %s: found %s, expected %s",
		csv_get(row, "item"), column, csv_get(row, column), expected);
}

double csv_sum(const cJSON *rows, const char *column)
{
	const cJSON *row;
	double all = 0;

	cJSON_ArrayForEach(row, rows) {
		double number = csv_number(row, column);

		all += isnan(number) ? 0 : number;
	}
	return all;
}
