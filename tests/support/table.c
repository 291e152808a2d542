#include "support/table.h"

#include "base/file.h"
#include "support/scratch.h"

#include <check.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

enum { FILE_MOST = 1 << 20 };

void table_clear(struct table *at, const char *name)
{
	at->t = NULL;
	at->folder = scratch_new();
	ck_assert_int_gt(asprintf(&at->plot, "%s/%s", at->folder, name), 0);
}

void table_write(const struct table *at, const char *plot)
{
	struct file_error error;

	ck_assert_msg(file_write(at->plot, plot, strlen(plot), &error), "%s", error.sentence);
}

static struct text file_of(const char *folder, const char *name)
{
	struct text bytes = TEXT_EMPTY;
	struct file_error error;
	char path[4200];

	snprintf(path, sizeof path, "%s/%s", folder, name);
	ck_assert_msg(file_read(path, FILE_MOST, &bytes, &error), "%s", error.sentence);
	return bytes;
}

void table_lay_out(struct table *at, const char *name)
{
	struct text plot = file_of("tests/plots", name);

	table_clear(at, name);
	table_write(at, plot.bytes);
	text_fini(&plot);
}

struct terminal *table_start_another(const struct table *at, const struct launch *how)
{
	struct launch launch = how ? *how : (struct launch){ .rows = 0 };

	launch.argv = (const char *[]){ BUILD_FOLDER "/parterre", at->plot, NULL };
	return terminal_new(&launch);
}

void table_start(struct table *at, const struct launch *how)
{
	at->t = table_start_another(at, how);
}

void table_start_in_shell(struct table *at)
{
	at->t = terminal_new(&(struct launch){
		.argv = (const char *[]){ "/bin/bash", "--norc", "-i", NULL },
		.env = (const char *[]){ "PS1=prompt> ", NULL },
	});
	terminal_wait(at->t, "prompt>");
	terminal_type(at->t, BUILD_FOLDER "/parterre ");
	terminal_type(at->t, at->plot);
	terminal_type(at->t, "\r");
	table_wait(at->t);
}

void table_wait(struct terminal *t)
{
	terminal_wait(t, "? help");
}

void table_sit(struct table *at, const char *name, int rows, int columns)
{
	table_lay_out(at, name);
	table_start(at, &(struct launch){ .rows = rows, .columns = columns });
	table_wait(at->t);
}

struct text table_file(const struct table *at, const char *name)
{
	return file_of(at->folder, name);
}

void table_check_file(const struct table *at, const char *part)
{
	struct text plot = table_file(at, strrchr(at->plot, '/') + 1);

	ck_assert_msg(strstr(plot.bytes, part), "%s\ndoes not hold\n%s", plot.bytes, part);
	text_fini(&plot);
}

void table_check_saved(const struct table *at, const char *part)
{
	terminal_keys(at->t, "> >");
	terminal_wait(at->t, "Saved in ");
	table_check_file(at, part);
}

bool table_has_rescue(const struct table *at)
{
	static const char *const suffixes[] = { "rescue", "journal" };
	bool is_found = false;
	char path[4200];

	for (int i = 0; i < 2; i++) {
		snprintf(path, sizeof path, "%s/.%s.%s", at->folder, strrchr(at->plot, '/') + 1,
			suffixes[i]);
		is_found = is_found || access(path, F_OK) == 0;
	}
	return is_found;
}

void table_leave(struct table *at)
{
	terminal_free(at->t);
	scratch_remove(at->folder);
	free(at->plot);
}
