import './ahead-of-file.ts'
import '../../style/last-resort.css'
import './main.tsx'
