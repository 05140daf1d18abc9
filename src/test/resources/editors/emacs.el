;;; Opens a plan in Emacs as our page sets it up, asks Eglot for what a gardener would, and says what came.

(require 'eglot)
(setq eglot-sync-connect t
      eglot-confirm-server-initiated-edits nil
      make-backup-files nil)
(load (getenv "SLIPDAY_SETUP"))

(defun say (form &rest words)
  (princ (concat (apply #'format form words) "\n")))

(defun wait-for (what)
  "Lets the server speak until WHAT gives something, half a minute at most."
  (let ((tries 300) found)
    (while (and (not (setq found (funcall what))) (> tries 0))
      (setq tries (1- tries))
      (accept-process-output nil 0.1))
    found))

(defun told (rule)
  "The finding of RULE, once it is told."
  (wait-for (lambda ()
              (seq-find (lambda (d) (string-match-p (regexp-quote rule) (flymake-diagnostic-text d)))
                        (flymake-diagnostics)))))

(defun at (words)
  (goto-char (point-min))
  (search-forward words)
  (goto-char (match-beginning 0)))

(defun asked (method &rest more)
  (eglot--signal-textDocument/didChange)
  (jsonrpc-request (eglot--current-server-or-lose) method
                   (append (eglot--TextDocumentPositionParams) more)))

(find-file (getenv "SLIPDAY_PLAN"))
(say "mode %s" major-mode)
(unless (eglot-current-server)
  (apply #'eglot (eglot--guess-contact)))
(flymake-mode 1)
(flymake-start)

(let ((wrong (told "There is no crop")))
  (say "told in line %d" (line-number-at-pos (flymake-diagnostic-beg wrong)))
  (goto-char (flymake-diagnostic-beg wrong))
  (let ((mend (seq-find (lambda (a) (equal (plist-get a :title) "Write `muskmelon`"))
                        (append (eglot-code-actions (point) (point)) nil))))
    (say "mend %s" (plist-get mend :title))
    (eglot--apply-workspace-edit (plist-get mend :edit))))
(at "is a")
(say "line %s" (buffer-substring (line-beginning-position) (line-end-position)))
(at "muskmelon")
(let ((hover (format "%s" (asked :textDocument/hover))))
  (string-match "Cucumis [a-z]+" hover)
  (say "hover %s" (match-string 0 hover)))
(at "long-south\n  plants")
(let ((place (aref (asked :textDocument/definition) 0)))
  (say "declared in line %d"
       (1+ (plist-get (plist-get (plist-get place :range) :start) :line))))
(eglot-rename "sunny")
(at "in             sunny")
(say "renamed %s" (buffer-substring (line-beginning-position) (line-end-position)))
(at "is a")
(insert "     ")
(eglot-format-buffer)
(at "is a")
(say "laid out %s" (buffer-substring (line-beginning-position) (line-end-position)))
(set-buffer-modified-p nil)
(eglot-shutdown (eglot-current-server))
(say "left")
