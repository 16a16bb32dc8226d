export const HELP = `Commands
  build [job ...]   build the documents of all jobs, or of the jobs named
  check [job ...]   read and calculate, show problems and findings, write nothing
  start NAME        make a new job folder with comments that teach
  sheet             print the blank site-walk sheet to the output folder
  serve             build the pages and show them; rebuild when a file changes

Options
  --jobs DIR        folder with the company folder and one folder a job (jobs)
  --output DIR      folder for what is built (output)
  --browser FILE    the browser that prints the PDFs
  --port N          port of serve (8080)

Exit codes
  0 done
  1 problems in your files
  2 a fault of this program
  3 wrong usage, or a folder or port that cannot be used
  4 built, but without PDFs`;
