/* Records of comma-separated values. */
#include "support/runner.h"
#include "support/csv.h"
#include "report/csv/csv_record.h"

/* Quotes as in RFC 4180, section 2, 5 to 7; ends of lines as in 1 and 2. */
START_TEST(fields_are_quoted_where_they_must_be)
{
	static const char *const fields[] = { "aaa", "b \r\nbb", "b\"bb", "x,y", NULL, " z ", "\"",
		"=1" };
	struct text csv = TEXT_EMPTY;
	struct text_sink sink = text_sink(&csv);

	csv_record(&sink.sink, fields, 8);
	ck_assert_str_eq(csv.bytes,
		"aaa,\"b \r\nbb\",\"b\"\"bb\",\"x,y\",, z ,\"\"\"\",=1\r\n");
	text_fini(&csv);
}
END_TEST

enum { FIELDS = 5, RECORDS = 400 };

static struct text fields_drawn[RECORDS][FIELDS];

static void draw(struct random *random, struct text *field)
{
	static const char letters[] = "a\",\r\n =\t'";

	*field = TEXT_EMPTY;
	for (int length = random_below(random, 6); length > 0; length--)
		text_add_bytes(field, &letters[random_below(random, sizeof letters - 1)], 1);
}

START_TEST(whatever_is_in_a_field_is_read_back)
{
	struct random random = { 41 };
	struct text csv = TEXT_EMPTY;
	struct text_sink sink = text_sink(&csv);

	for (int i = 0; i < RECORDS; i++) {
		const char *fields[FIELDS];

		for (int j = 0; j < FIELDS; j++) {
			draw(&random, &fields_drawn[i][j]);
			fields[j] = fields_drawn[i][j].bytes;
		}
		csv_record(&sink.sink, fields, FIELDS);
	}
	cJSON *records = csv_records(&csv);

	ck_assert_int_eq(cJSON_GetArraySize(records), RECORDS);
	for (int i = 0; i < RECORDS; i++) {
		for (int j = 0; j < FIELDS; j++) {
			ck_assert_str_eq(cJSON_GetArrayItem(cJSON_GetArrayItem(records, i), j)->
				valuestring, fields_drawn[i][j].bytes);
			text_fini(&fields_drawn[i][j]);
		}
	}
	cJSON_Delete(records);
	text_fini(&csv);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("csv_record");
	TCase *records = suite_case(suite, "records");

	tcase_add_test(records, fields_are_quoted_where_they_must_be);
	tcase_add_test(records, whatever_is_in_a_field_is_read_back);
	return suite;
}
