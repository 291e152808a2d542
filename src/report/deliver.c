#include "report/deliver.h"
#include "report/words/first_line.h"

#include <stdio.h>
#include <string.h>

enum { LOOK_BYTES = 256 };

/* What is in the file at path that may not be replaced; NULL: it is empty or begins like what is
 * printed, which nobody fills in. */
static const char *kept_content(const char *path)
{
	char head[LOOK_BYTES];
	FILE *file = fopen(path, "re");
	size_t length;

	if (!file)
		return "something that cannot be read";
	length = fread(head, 1, sizeof head, file);
	fclose(file);
	if (report_is_table(head, length))
		return "a table, in which somebody may have filled in more";
	return length == 0 || report_is_takeoff(head, length) ? NULL :
		"something that is no takeoff, plan, set-out, sun, drawing, comparison or snags";
}

/* By whatever name. */
static bool is_source(const char *path, const char *source)
{
	return source && file_is_same(path, strcmp(source, "-") == 0 ? "/dev/stdin" : source);
}

enum delivery report_deliver(const char *path, const struct file_content *content,
	const struct delivery_from *from, bool force, struct file_error *error)
{
	struct file_stamp there = file_stamp(path);
	const char *holds;

	for (const struct delivery_from *of = from; of; of = of->other) {
		bool is_plot = is_source(path, of->plot);

		if (!is_plot && !is_source(path, of->book))
			continue;
		snprintf(error->sentence, sizeof error->sentence, "%.150s is the %s: nothing "
			"written", path, is_plot ? "plot itself" : "price book that it reads");
		return DELIVERY_FAILED;
	}
	holds = there.exists && there.is_regular && !force ? kept_content(path) : NULL;
	if (holds) {
		snprintf(error->sentence, sizeof error->sentence,
			"%.150s holds %s: nothing written", path, holds);
		return DELIVERY_WOULD_REPLACE;
	}
	return file_print(path, content, error) ? DELIVERY_DONE : DELIVERY_FAILED;
}
