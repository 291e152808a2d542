/* Files read whole and written safely. Errors are sentences for people. */
#ifndef BASE_FILE_H
#define BASE_FILE_H

#include "base/sink.h"

#include <stdbool.h>
#include <stddef.h>
#include <sys/types.h>
#include <time.h>

/* What a file was when it was last seen: two stamps differ when somebody has written it since. */
struct file_stamp {
	bool exists, is_regular;
	dev_t device;
	ino_t inode;
	off_t size;
	struct timespec written; /* its bytes; can be set back */
	struct timespec changed; /* anything of it, names too */
};

struct file_error {
	char sentence[512]; /* "cannot open PATH: No such file or directory" */
};

/* Reads the whole of a regular file, or of standard input for "-", into out in place of what it
 * held. More than `most` bytes are refused, as is anything but a regular file, before a byte is
 * read: a device or a pipe cannot hang the reader. */
bool file_read(const char *path, size_t most, struct text *out, struct file_error *error);

/* Writes bytes to path so that either the old file or the whole new one is there, whatever
 * happens: a new file beside it, synced, renamed over it, mode and owner kept, symbolic links
 * followed. Where the file has other hard links, or its directory takes no new file, it is
 * rewritten in place, once the disk has room for it and a synced copy of the new content is kept
 * elsewhere: path_beside or path_in_state with FILE_COPY, dropped when the file is whole. Refuses
 * to write over anything but a regular file, and over one without permission to write. After an
 * error the old file is untouched and no other is left, but for an in-place rewrite that failed
 * midway: "cannot finish rewriting PATH: ..."; then the copy stays and is named. */
#define FILE_COPY ".copy"
bool file_write(const char *path, const char *bytes, size_t length, struct file_error *error);
/* The same for what `print` prints; it is asked once, or again where a place for a copy has no room
 * for it.
 * Where the work is stopped (base/stop.h) nothing is written. */
struct file_content {
	void (*print)(struct sink *sink, const void *context);
	const void *context;
};
bool file_print(const char *path, const struct file_content *content, struct file_error *error);
/* Writes a new file with the mode and owner of the file `like`, for its owner alone where there
 * is no such file. errno is EEXIST where something has the name path. */
bool file_write_new(const char *path, const char *like, const struct text *text,
	struct file_error *error);

/* Sets "cannot ACT PATH: WHY", a long path cut; returns false. errno stays. */
bool file_fail(struct file_error *error, const char *act, const char *path, const char *why);

struct file_stamp file_stamp(const char *path);
/* True where path leads to nothing, so that a file may be made there; false also where it leads in
 * a circle or through what may not be entered. */
bool file_is_missing(const char *path);
bool file_stamp_equal(const struct file_stamp *a, const struct file_stamp *b);
/* True where path is a name of the open file itself. */
bool file_is_at(int fd, const char *path);
/* True when both paths name one file, also by way of links. */
bool file_is_same(const char *a, const char *b);

#endif
