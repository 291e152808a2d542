#include "support/strokes.h"

#include "plot/history/rescue.h"

#include <check.h>
#include <dirent.h>
#include <stdio.h>
#include <string.h>

int strokes_of(const struct plot *plot)
{
	size_t count = ground_count(&plot->ground), strokes = 0;

	while (strokes < count && plot->ground.cells[strokes] == 'b')
		strokes++;
	return (int)strokes;
}

/* What can be read of the file, a plot or a journal. */
static void count_file(const struct store *store, const char *path, int *most)
{
	struct rescue rescue;

	rescue_read(store, path, &rescue);
	if (rescue.state != JOURNAL_UNREADABLE && strokes_of(&rescue.plot) > *most)
		*most = strokes_of(&rescue.plot);
	rescue_fini(&rescue);
}

static void count_folder(const struct store *store, const char *folder, int *most)
{
	DIR *entries = opendir(folder);

	for (struct dirent *entry; (entry = readdir(entries));) {
		char path[4400];

		snprintf(path, sizeof path, "%s/%s", folder, entry->d_name);
		count_file(store, path, most);
		ck_assert_msg(strncmp(entry->d_name, ".parterre-", 10) != 0, "%s is left",
			entry->d_name);
	}
	closedir(entries);
}

static void count_plot(struct store *store, int *strokes)
{
	struct text message = TEXT_EMPTY;
	struct plot plot;

	plot_init(&plot);
	ck_assert_msg(store_load(store, &plot, &message), "%s", message.bytes);
	*strokes = strokes_of(&plot);
	plot_fini(&plot);
	text_fini(&message);
}

void strokes_find(struct strokes *found, const char *folder, const char *plot)
{
	struct rescue_list list;
	struct store store;

	store_open(&store, plot);
	count_plot(&store, &found->saved);
	found->offered = found->saved;
	rescue_find(&store, &list);
	for (size_t i = 0; i < list.count; i++)
		count_file(&store, list.paths[i], &found->offered);
	rescue_list_fini(&list);
	found->anywhere = found->offered;
	count_folder(&store, folder, &found->anywhere);
	store_close(&store);
}
