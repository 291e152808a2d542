#include "support/csv.h"
#include "report/csv/csv.h"
#include "support/json.h"

#include <check.h>
#include <fcntl.h>
#include <math.h>
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/wait.h>
#include <unistd.h>

/* Tables in, each after its length on a line of its own; for each a line of JSON out: the records,
 * or in words why there are none. It ends where its input does. */
static const char script[] =
	"import csv, io, json, sys\n"
	"for length in iter(sys.stdin.buffer.readline, b''):\n"
	"    table = sys.stdin.buffer.read(int(length))\n"
	"    try:\n"
	"        text = io.StringIO(table.decode('utf-8'), newline='')\n"
	"        records = list(csv.reader(text, strict=True))\n"
	"    except (csv.Error, UnicodeDecodeError) as error:\n"
	"        records = str(error)\n"
	"    print(json.dumps(records), flush=True)\n";

/* One for all tables of a test, since starting it takes far longer than what it does. */
static struct {
	pid_t process; /* 0: none so far */
	FILE *tables, *answers;
} reader;

static void reader_run(int tables, int answers)
{
	dup2(tables, STDIN_FILENO);
	dup2(answers, STDOUT_FILENO);
	execlp("python3", "python3", "-c", script, (char *)NULL);
	perror("python3");
	_exit(127);
}

static void reader_start(void)
{
	int tables[2], answers[2];

	ck_assert_int_eq(pipe2(tables, O_CLOEXEC), 0);
	ck_assert_int_eq(pipe2(answers, O_CLOEXEC), 0);
	signal(SIGPIPE, SIG_IGN); /* a reader that has ended is told of, below */
	reader.process = fork();
	ck_assert_int_ge(reader.process, 0);
	if (reader.process == 0)
		reader_run(tables[0], answers[1]);
	close(tables[0]);
	close(answers[1]);
	reader.tables = fdopen(tables[1], "w");
	reader.answers = fdopen(answers[0], "r");
	ck_assert(reader.tables && reader.answers);
}

/* What it had to say is on standard error. */
static void reader_ended(void)
{
	int status = 0;

	fclose(reader.tables);
	fclose(reader.answers);
	waitpid(reader.process, &status, 0);
	reader.process = 0;
	ck_abort_msg("the reader of tables ended, %s %d",
		WIFEXITED(status) ? "with status" : "by signal",
		WIFEXITED(status) ? WEXITSTATUS(status) : WTERMSIG(status));
}

cJSON *csv_records(const struct text *csv)
{
	char *json = NULL;
	size_t capacity = 0;
	cJSON *records;

	if (!reader.process)
		reader_start();
	fprintf(reader.tables, "%zu\n", csv->length);
	fwrite(csv->bytes, 1, csv->length, reader.tables);
	if (fflush(reader.tables) != 0 || getline(&json, &capacity, reader.answers) < 0)
		reader_ended();
	records = cJSON_Parse(json);
	ck_assert_msg(cJSON_IsArray(records), "not read as a table: %s", json);
	free(json);
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
