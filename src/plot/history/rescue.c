#include "plot/history/rescue.h"
#include "base/folder.h"
#include "base/memory.h"
#include "base/path.h"

#include <dirent.h>
#include <errno.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

/* A journal: a plot and as much again of steps, the last of them as long as a plot may be. */
enum { JOURNAL_BYTES_MOST = 4 * FORMAT_BYTES_MOST, KEPT_MOST = 100 };

static const char journal_suffix[] = ".journal", plot_word[] = "parterre-plot";

/* ---- Finding --------------------------------------------------------------------------------- */

void rescue_list_fini(struct rescue_list *list)
{
	for (size_t i = 0; i < list->count; i++)
		free(list->paths[i]);
	free(list->paths);
	*list = (struct rescue_list){ .paths = NULL };
}

/* Takes over the path. */
static void list_add(struct rescue_list *list, char *path)
{
	list->paths = memory_grow(list->paths, list->count, &list->capacity, sizeof *list->paths);
	list->paths[list->count++] = path;
}

static void add_if_there(struct rescue_list *list, char *path)
{
	struct stat status;

	if (path && lstat(path, &status) == 0)
		list_add(list, path);
	else
		free(path);
}

static void add_if_left(struct rescue_list *list, char *path, long process)
{
	if (path && !journal_is_left(path, process)) {
		free(path);
		return;
	}
	add_if_there(list, path);
}

static int path_compare(const void *a, const void *b)
{
	return strcmp(*(char *const *)a, *(char *const *)b);
}

/* The journals of sessions without a lock: `journal` and the process. */
static void add_of_processes(struct rescue_list *list, const char *journal)
{
	size_t folder_length = path_folder(journal), first = list->count;
	const char *name = journal + folder_length;
	size_t length = strlen(name);
	char *folder = path_parent(journal);
	DIR *open_folder = opendir(folder);
	const struct dirent *entry;

	while (open_folder && (entry = readdir(open_folder))) {
		const char *digits = entry->d_name + length + 1;
		struct text path = TEXT_EMPTY;

		if (strncmp(entry->d_name, name, length) != 0 || entry->d_name[length] != '.' ||
		    *digits == '\0' || digits[strspn(digits, "0123456789")] != '\0')
			continue;
		text_print(&path, "%.*s%s", (int)folder_length, journal, entry->d_name);
		add_if_left(list, text_take(&path), strtol(digits, NULL, 10));
	}
	if (open_folder)
		closedir(open_folder);
	free(folder);
	if (list->count > first)
		qsort(list->paths + first, list->count - first, sizeof *list->paths, path_compare);
}

void rescue_find(const struct store *store, struct rescue_list *list)
{
	char *beside = path_beside(store->path, ".", journal_suffix);
	char *state = path_in_state(store->path, journal_suffix);

	*list = (struct rescue_list){ .paths = NULL };
	if (store->access != STORE_LOOKS) {
		add_if_left(list, memory_string(beside), 0);
		add_if_there(list, path_beside(store->path, ".", FILE_COPY));
		add_if_there(list, path_beside(store->path, ".", ".rescue"));
		add_of_processes(list, beside);
	}
	if (store->access != STORE_LOOKS && state) {
		add_if_left(list, memory_string(state), 0);
		add_if_there(list, path_in_state(store->path, FILE_COPY));
		add_of_processes(list, state);
	}
	free(beside);
	free(state);
}

/* ---- Reading --------------------------------------------------------------------------------- */

static bool is_regular(const char *path)
{
	struct stat status;

	return lstat(path, &status) == 0 && S_ISREG(status.st_mode);
}

static enum journal_state plot_read(const struct text *bytes, struct rescue *rescue)
{
	struct diag d;

	if (format_read(bytes->bytes, bytes->length, &rescue->plot, &d))
		return JOURNAL_WHOLE;
	text_print(&rescue->why, "line %d: found %s, expected %s", d.line, d.found, d.expected);
	return JOURNAL_UNREADABLE;
}

static void journal_read(const struct store *store, const struct text *bytes,
	struct rescue *rescue)
{
	const struct plot_stamp now = store_stamp(store);
	struct plot_stamp then;
	const char *why;

	rescue->state = journal_text_read(bytes, &rescue->plot, &then, &why);
	if (rescue->state != JOURNAL_WHOLE)
		text_add(&rescue->why, why);
	rescue->is_newer = rescue->state != JOURNAL_UNREADABLE && plot_stamp_equal(&then, &now);
}

void rescue_read(const struct store *store, const char *path, struct rescue *rescue)
{
	struct text bytes = TEXT_EMPTY;
	struct file_error error;

	*rescue = (struct rescue){ .path = path, .state = JOURNAL_UNREADABLE, .why = TEXT_EMPTY,
		.written = file_stamp(path).written };
	plot_init(&rescue->plot);
	if (!is_regular(path))
		text_add(&rescue->why, "it is not a regular file");
	else if (!file_read(path, JOURNAL_BYTES_MOST, &bytes, &error))
		text_add(&rescue->why, error.sentence);
	else if (strncmp(bytes.bytes, plot_word, strlen(plot_word)) == 0)
		rescue->state = plot_read(&bytes, rescue);
	else
		journal_read(store, &bytes, rescue);
	text_fini(&bytes);
}

void rescue_fini(struct rescue *rescue)
{
	plot_fini(&rescue->plot);
	text_fini(&rescue->why);
}

/* ---- What becomes of it ---------------------------------------------------------------------- */

struct keeping {
	const struct store *store;
	const struct rescue *rescue;
	bool stays; /* the file has its name still, until another takes its place */
};

/* A file that cannot be read whole, as it is. */
static bool file_keep(const struct keeping *keeping, const char *name)
{
	const char *path = keeping->rescue->path;

	if (keeping->stays && link(path, name) == 0)
		return true;
	return folder_rename_new(path, name);
}

/* The work as a plot, or the file as it is, under a name that nobody has. */
static bool keep_as(const struct keeping *keeping, const char *name)
{
	struct text bytes = TEXT_EMPTY;
	struct file_error error;
	bool done;

	if (keeping->rescue->state != JOURNAL_WHOLE)
		return file_keep(keeping, name);
	format_write(&keeping->rescue->plot, &bytes);
	done = file_write_new(name, keeping->store->path, &bytes, &error);
	text_fini(&bytes);
	if (done)
		rescue_drop(keeping->rescue);
	return done;
}

static bool keep_in(const struct keeping *keeping, char *name, char **kept)
{
	for (int i = 1; name && i <= KEPT_MOST; i++) {
		struct text numbered = TEXT_EMPTY;

		text_add(&numbered, name);
		if (i > 1)
			text_print(&numbered, "-%d", i);
		*kept = text_take(&numbered);
		if (keep_as(keeping, *kept))
			break;
		free(*kept);
		*kept = NULL;
		if (errno != EEXIST)
			break;
	}
	free(name);
	return *kept != NULL;
}

static bool keep(const struct keeping *keeping, char **kept)
{
	const char *plot = keeping->store->path;

	*kept = NULL;
	/* Whatever else has the name of a journal is not ours to rename. */
	if (!is_regular(keeping->rescue->path))
		return false;
	return keep_in(keeping, path_beside(plot, "", ".rescued"), kept) ||
		keep_in(keeping, path_in_state(plot, ".rescued"), kept);
}

bool rescue_set_aside(const struct store *store, const struct rescue *rescue, char **kept)
{
	return keep(&(struct keeping){ store, rescue, false }, kept);
}

void rescue_set_all_aside(const struct store *store, char **kept)
{
	struct rescue_list list;

	*kept = NULL;
	rescue_find(store, &list);
	for (size_t i = 0; i < list.count; i++) {
		struct rescue rescue;
		char *name;

		rescue_read(store, list.paths[i], &rescue);
		if (rescue_set_aside(store, &rescue, &name)) {
			free(*kept);
			*kept = name;
		}
		rescue_fini(&rescue);
	}
	rescue_list_fini(&list);
}

void rescue_take(struct store *store, const struct rescue *rescue, char **kept)
{
	*kept = NULL;
	if (rescue->state == JOURNAL_DAMAGED &&
	    !keep(&(struct keeping){ store, rescue, true }, kept))
		return;
	free(store->taken);
	store->taken = memory_string(rescue->path);
}

void rescue_drop(const struct rescue *rescue)
{
	unlink(rescue->path);
}
