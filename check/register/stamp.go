package register

import (
	"io/fs"
	"os"
	"path/filepath"
	"time"
)

// settled is how old the time of a file has to be to show that the file is as it was read: a write soon after another may
// bear the same time.
const settled = 2 * time.Second

// wholeEvery is after how many looks every sheet is read again, since a copy may bring the old time and length along.
const wholeEvery = 60

// stamp is what a folder tells about a file that was read. The zero stamp is that of no file.
type stamp struct {
	mode fs.FileMode
	size int64
	at   int64 // nanoseconds
}

// changed are the sheets to read again. Whatever is in doubt is read: its digest decides whether it is judged.
func (w *watch) changed(all []found) (open []found, stamps []stamp) {
	w.looks++
	whole := w.looks%wholeEvery == 0
	for _, f := range all {
		s := w.stampOf(f.file)
		if whole || s == (stamp{}) || s != w.stamps[f.path] {
			open, stamps = append(open, f), append(stamps, s)
		}
	}
	return open, stamps
}

func (w *watch) stampOf(file string) stamp {
	info, err := os.Stat(filepath.Join(w.o.Dir, filepath.FromSlash(file)))
	if err != nil || time.Since(info.ModTime()) < settled {
		return stamp{}
	}
	return stamp{info.Mode(), info.Size(), info.ModTime().UnixNano()}
}
