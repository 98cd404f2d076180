package record

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
)

// Replace writes a whole file so that at every moment, and after a crash, either the old content or the new is there. It
// returns once the new one is on the disk. Callers that read before they replace hold Lock meanwhile.
func Replace(path string, content []byte, mode fs.FileMode) error {
	file, err := os.CreateTemp(filepath.Dir(path), "."+filepath.Base(path)+".*")
	if err != nil {
		return err
	}
	err = fill(file, content, mode)
	if err == nil {
		err = os.Rename(file.Name(), path)
	}
	if err != nil {
		return errors.Join(err, os.Remove(file.Name()))
	}
	return syncFolder(filepath.Dir(path))
}

func fill(file *os.File, content []byte, mode fs.FileMode) error {
	_, err := file.Write(content)
	if err == nil {
		err = file.Chmod(mode)
	}
	if err == nil {
		err = file.Sync()
	}
	return errors.Join(err, file.Close())
}
