#include "base/path.h"
#include "base/hash.h"
#include "base/memory.h"
#include "base/text.h"

#include <errno.h>
#include <inttypes.h>
#include <limits.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

enum { LINKS_MOST = 40 };

size_t path_folder(const char *path)
{
	const char *slash = strrchr(path, '/');

	return slash ? (size_t)(slash - path) + 1 : 0;
}

char *path_parent(const char *path)
{
	size_t length = path_folder(path);

	return length ? memory_bytes(path, length) : memory_string(".");
}

size_t path_stem(const char *path, const char *ending)
{
	size_t length = strlen(path), end = strlen(ending);

	return length >= end && strcmp(path + length - end, ending) == 0 ? length - end : length;
}

char *path_followed(const char *path)
{
	char target[PATH_MAX];
	char *name = memory_string(path);

	for (int i = 0; i < LINKS_MOST; i++) {
		ssize_t length = readlink(name, target, sizeof target - 1);
		struct text next = TEXT_EMPTY;

		if (length < 0)
			return name;
		target[length] = '\0';
		if (target[0] != '/')
			text_add_bytes(&next, name, path_folder(name));
		text_add(&next, target);
		free(name);
		name = text_take(&next);
	}
	free(name);
	errno = ELOOP;
	return NULL;
}

char *path_beside(const char *path, const char *prefix, const char *suffix)
{
	char *followed = path_followed(path);
	const char *real = followed ? followed : path;
	size_t folder = path_folder(real);
	struct text name = TEXT_EMPTY;

	text_add_bytes(&name, real, folder);
	text_print(&name, "%s%s%s", prefix, real + folder, suffix);
	free(followed);
	return text_take(&name);
}

/* Without links, though the file may not exist. */
static char *path_real(const char *path)
{
	char *followed = path_beside(path, "", "");
	char *folder = path_parent(followed), *real = realpath(folder, NULL);
	struct text full = TEXT_EMPTY;

	text_print(&full, "%s/%s", real ? real : folder, followed + path_folder(followed));
	free(real);
	free(folder);
	free(followed);
	return text_take(&full);
}

char *path_in_state(const char *path, const char *suffix)
{
	const char *state = getenv("XDG_STATE_HOME"), *home = getenv("HOME");
	bool has_state = state && state[0] == '/';
	struct text name = TEXT_EMPTY;
	char *real;

	if (!has_state && (!home || home[0] != '/'))
		return NULL;
	real = path_real(path);
	text_print(&name, "%s%s/parterre/%016" PRIx64 "%s", has_state ? state : home,
		has_state ? "" : "/.local/state", hash_bytes(HASH_EMPTY, real, strlen(real)),
		suffix);
	free(real);
	return text_take(&name);
}

char *path_typed(const char *name)
{
	bool is_in_home = name[0] == '~' && (name[1] == '/' || name[1] == '\0');
	const char *home = is_in_home ? getenv("HOME") : NULL;
	struct text full = TEXT_EMPTY;

	text_print(&full, "%s%s", home && *home ? home : "", home && *home ? name + 1 : name);
	return text_take(&full);
}

char *path_in_folder(const char *path, const char *name)
{
	char *followed = path_followed(path), *typed = path_typed(name);
	const char *real = followed ? followed : path;
	struct text full = TEXT_EMPTY;

	if (typed[0] != '/')
		text_add_bytes(&full, real, path_folder(real));
	if (full.length == 0 && strcmp(typed, "-") == 0)
		text_add(&full, "./");
	text_add(&full, typed);
	free(typed);
	free(followed);
	return text_take(&full);
}
