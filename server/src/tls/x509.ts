// The certificate library resolves its parts through reflected types and refuses to load without this.
import "reflect-metadata";

export * from "@peculiar/x509";
