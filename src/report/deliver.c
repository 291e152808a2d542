#include "report/deliver.h"
#include "report/words/first_line.h"

#include <stdio.h>

enum { LOOK_BYTES = 256 };

/* Whether the file at path may not be replaced: it neither is empty nor begins like a takeoff,
 * or it cannot be read. */
static bool holds_something_else(const char *path)
{
	char head[LOOK_BYTES];
	FILE *file = fopen(path, "re");
	size_t length;

	if (!file)
		return true;
	length = fread(head, 1, sizeof head, file);
	fclose(file);
	return length > 0 && !report_is_takeoff(head, length);
}

enum delivery report_deliver(const char *path, const struct file_content *content,
	const char *plot_path, bool force, struct file_error *error)
{
	struct file_stamp there = file_stamp(path);

	if (file_is_same(path, plot_path)) {
		snprintf(error->sentence, sizeof error->sentence,
			"%.150s is the plot itself: nothing written", path);
		return DELIVERY_FAILED;
	}
	if (there.exists && there.is_regular && !force && holds_something_else(path)) {
		snprintf(error->sentence, sizeof error->sentence,
			"%.150s holds something that is no takeoff: nothing written", path);
		return DELIVERY_WOULD_REPLACE;
	}
	return file_print(path, content, error) ? DELIVERY_DONE : DELIVERY_FAILED;
}
