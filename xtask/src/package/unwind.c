/* What GNU's unwinder asks of the C library and musl has not: where the table of a program's frames lies.
   A Rust library built from source for musl unwinds by libgcc_eh, as it stands on Debian, and needs this beside it. */
#define _GNU_SOURCE
#include <link.h>
#include <pthread.h>
#include <stddef.h>
#include <stdint.h>

struct dl_find_object {
    unsigned long long flags;
    void *map_start, *map_end;
    struct link_map *map;
    void *eh_frame;
    unsigned long long reserved[7];
};
struct search { uintptr_t address; struct dl_find_object *found; };

static int look(struct dl_phdr_info *object, size_t size, void *data)
{
    struct search *search = data;
    void *eh_frame = NULL;
    uintptr_t start = 0, end = 0;
    (void)size;
    for (int i = 0; i < object->dlpi_phnum; i++) {
        const ElfW(Phdr) *part = &object->dlpi_phdr[i];
        uintptr_t at = object->dlpi_addr + part->p_vaddr;
        if (part->p_type == PT_LOAD && search->address >= at && search->address < at + part->p_memsz) {
            start = at;
            end = at + part->p_memsz;
        }
        if (part->p_type == PT_GNU_EH_FRAME)
            eh_frame = (void *)at;
    }
    if (!end || !eh_frame)
        return 0;
    search->found->map_start = (void *)start;
    search->found->map_end = (void *)end;
    search->found->map = NULL;
    search->found->eh_frame = eh_frame;
    return 1;
}

int _dl_find_object(void *address, struct dl_find_object *found)
{
    struct search search = { (uintptr_t)address, found };
    return dl_iterate_phdr(look, &search) == 1 ? 0 : -1;
}

/* GNU's unwinder names these weakly: either all are linked or none. */
__attribute__((used)) static void *const strong[] = {
    (void *)pthread_once, (void *)pthread_key_create, (void *)pthread_getspecific, (void *)pthread_setspecific,
    (void *)pthread_mutex_lock, (void *)pthread_mutex_unlock,
};
