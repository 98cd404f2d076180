package main

import (
	"crypto/sha256"
	"fmt"
	"net/http"
	"os"
	"path/filepath"
)

// serve gives out the files of a folder, as a bundle service does: what has not changed is answered with 304.
func serve(args []string) error {
	if len(args) != 2 {
		return fmt.Errorf("want ADDRESS DIR")
	}
	return http.ListenAndServe(args[0], http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		text, err := os.ReadFile(filepath.Join(args[1], filepath.Base(r.URL.Path)))
		if err != nil {
			http.NotFound(w, r)
			return
		}
		tag := fmt.Sprintf("\"%x\"", sha256.Sum256(text))
		w.Header().Set("ETag", tag)
		if r.Header.Get("If-None-Match") == tag {
			w.WriteHeader(http.StatusNotModified)
			return
		}
		w.Write(text)
	}))
}
