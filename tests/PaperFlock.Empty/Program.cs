// Does nothing: what a .NET program costs before it has done anything, to hold ours against.
return;
