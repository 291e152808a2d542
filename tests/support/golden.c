#include "support/golden.h"

#include <check.h>
#include <errno.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static void golden_write(const char *path, const char *text)
{
	FILE *file = fopen(path, "w");

	ck_assert_msg(file, "%s cannot be written: %s", path, strerror(errno));
	fputs(text, file);
	ck_assert_msg(fclose(file) == 0, "%s cannot be written: %s", path, strerror(errno));
}

static char *golden_read(const char *path)
{
	FILE *file = fopen(path, "r");
	char *text = NULL;
	size_t capacity = 0;

	ck_assert_msg(file, "%s: %s (`make golden` writes it)", path, strerror(errno));
	if (getdelim(&text, &capacity, '\0', file) < 0) {
		free(text);
		text = strdup("");
	}
	fclose(file);
	return text;
}

void golden_check_file(const char *path, const char *text)
{
	if (getenv("UPDATE_GOLDEN")) {
		golden_write(path, text);
		return;
	}
	char *expected = golden_read(path);
	const char *found_line = text, *expected_line = expected;
	int line = 1;
	size_t same = 0;

	while (text[same] && text[same] == expected[same])
		if (text[same++] == '\n') {
			line++;
			found_line = text + same;
			expected_line = expected + same;
		}
	ck_assert_msg(text[same] == expected[same], "%s:%d:\n found    \"%.*s\"\n expected "
		"\"%.*s\"",
		path, line, (int)strcspn(found_line, "\n"), found_line,
		(int)strcspn(expected_line, "\n"), expected_line);
	free(expected);
}

void golden_check(const char *name, const char *text)
{
	char path[256];

	snprintf(path, sizeof path, "tests/golden/%s", name);
	golden_check_file(path, text);
}

bool golden_begins(const char *name, const char *text)
{
	char path[256], *expected;
	bool is_so;

	if (getenv("UPDATE_GOLDEN"))
		return true;
	snprintf(path, sizeof path, "tests/golden/%s", name);
	expected = golden_read(path);
	is_so = strncmp(expected, text, strlen(text)) == 0;
	free(expected);
	return is_so;
}
