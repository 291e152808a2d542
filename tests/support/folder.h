/* Files in a scratch folder, by their names there. */
#ifndef SUPPORT_FOLDER_H
#define SUPPORT_FOLDER_H

#include "base/text.h"

#include <sys/types.h>

/* For a checked fixture: a folder for each test. */
void folder_start(void);
void folder_end(void);

/* The path of a name in the folder; good until 16 more are asked for. "": the folder's own. */
const char *in(const char *name);
void make(const char *name, const char *text);
bool is_there(const char *name);
/* Files in the folder. */
int folder_count(void);
mode_t mode_of(const char *name);
/* What the file holds; to be cleaned up with text_fini. */
struct text bytes_of(const char *name);

/* Runs `act` in a process of its own, which says when it is done and then waits to be killed. */
pid_t session_start(void (*act)(void));
void session_kill(pid_t session);

/* Whom the rights of files bind: root, who may do all, becomes nobody for a while, and owns the
 * folder. One stands in the folder then, and `in` gives bare names, since nobody may not be let
 * through to it. */
void plain_user(void);
void usual_user(void);

#endif
